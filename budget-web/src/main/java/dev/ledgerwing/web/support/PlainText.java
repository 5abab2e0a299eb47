package dev.ledgerwing.web.support;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import jakarta.validation.ReportAsSingleViolation;
import jakarta.validation.constraints.Pattern;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * One line of text that can be seen: no line breaks, no control characters (PostgreSQL cannot store a NUL), no invisible
 * formatting characters, which could make one name look like another, and not spaces alone.
 */
@Pattern(regexp = "(?!\\p{Z}+$)[^\\p{Cc}\\p{Cf}\\p{Cs}\\p{Cn}\\p{Zl}\\p{Zp}]*")
@ReportAsSingleViolation
@Constraint(validatedBy = {})
@Target({ElementType.FIELD, ElementType.METHOD, ElementType.PARAMETER, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
public @interface PlainText {

    String message() default "Please leave out line breaks and invisible characters.";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
