package dev.ledgerwing.web.support;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.TransientDataAccessResourceException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;

/**
 * Says which failures are somebody's mistake or a clash and which status they get; the page is {@link ErrorPageController}'s.
 * An {@link IllegalArgumentException} is none of them: it is a fault of the program and stays a 500.
 */
@ControllerAdvice
class ErrorAdvice {

    @ExceptionHandler
    void refuse(Refusal refusal, HttpServletRequest request, HttpServletResponse response) throws IOException {
        request.setAttribute(ErrorPageController.SENTENCE, refusal.sentence());
        response.sendError(refusal.status().value());
    }

    @ExceptionHandler(ConcurrencyFailureException.class)
    void clash(HttpServletResponse response) throws IOException {
        response.sendError(HttpServletResponse.SC_CONFLICT);
    }

    /** Another change held the only place to write; the next try will do. */
    @ExceptionHandler(TransientDataAccessResourceException.class)
    void busy(HttpServletResponse response) throws IOException {
        response.sendError(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
    }

    @ExceptionHandler(MaxUploadSizeExceededException.class)
    void tooLarge(HttpServletResponse response) throws IOException {
        response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
    }

    @ExceptionHandler(MultipartException.class)
    void unreadable(HttpServletResponse response) throws IOException {
        response.sendError(HttpServletResponse.SC_BAD_REQUEST);
    }
}
