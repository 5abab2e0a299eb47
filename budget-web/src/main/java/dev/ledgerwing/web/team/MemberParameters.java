package dev.ledgerwing.web.team;

import dev.ledgerwing.core.quantity.Figures;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.stereotype.Component;
import org.springframework.util.Assert;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Lets a controller's method take the signed-in {@link Member} or that member's {@link Figures}. */
@Component
class MemberParameters implements HandlerMethodArgumentResolver, WebMvcConfigurer {

    private final CurrentMember current;

    MemberParameters(CurrentMember current) {
        this.current = current;
    }

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(this);
    }

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType() == Member.class || parameter.getParameterType() == Figures.class;
    }

    @Override
    public Object resolveArgument(
            MethodParameter parameter,
            @Nullable ModelAndViewContainer model,
            NativeWebRequest webRequest,
            @Nullable WebDataBinderFactory binders) {
        HttpServletRequest request = webRequest.getNativeRequest(HttpServletRequest.class);
        Assert.state(request != null, "members only make HTTP requests");
        Member member = current.of(request)
                .orElseThrow(() -> new AuthenticationCredentialsNotFoundException("nobody is signed in"));
        return parameter.getParameterType() == Member.class ? member : member.figures();
    }
}
