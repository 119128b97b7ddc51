package org.bonewright.server.rest;

import java.net.URI;
import java.util.List;
import org.bonewright.casefile.reading.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;

/**
 * Turns whatever goes wrong into problem details (RFC 9457), never into a stack trace. Nothing of
 * the request is logged: it may be about a patient.
 */
@RestControllerAdvice
class ProblemAdvice extends ResponseEntityExceptionHandler {

  private static final Logger LOG = LoggerFactory.getLogger(ProblemAdvice.class);
  private static final String KIND = "urn:bonewright:problem:";
  private static final int MOST_SHOWN = 1000;

  @ExceptionHandler
  ProblemDetail unusable(UnusableCase fault) {
    List<Problem> problems = fault.problems();
    long errors = problems.stream().filter(Problem::isError).count();
    ProblemDetail detail =
        of(
            HttpStatus.UNPROCESSABLE_CONTENT,
            "case-unusable",
            "The case cannot be used",
            errors
                + (errors == 1 ? " error" : " errors")
                + "; nothing was reviewed. The format is served at /api/schema/case.");
    detail.setProperty("problems", ProblemView.of(problems.stream().limit(MOST_SHOWN).toList()));
    if (problems.size() > MOST_SHOWN) {
      detail.setProperty("problemsLeftOut", problems.size() - MOST_SHOWN);
    }
    return detail;
  }

  @ExceptionHandler
  ProblemDetail tooLarge(CaseBody.TooLarge fault) {
    return of(
        HttpStatus.CONTENT_TOO_LARGE,
        "too-large",
        "The request is too large",
        "More than 1 MB was sent; a case file is far smaller. Nothing was reviewed.");
  }

  @ExceptionHandler
  ProblemDetail unknown(UnknownPrinciple fault) {
    return of(HttpStatus.NOT_FOUND, "unknown-principle", "No such principle", fault.getMessage());
  }

  @ExceptionHandler
  ProblemDetail elsewhere(NotJudgedThere fault) {
    return of(HttpStatus.NOT_FOUND, "not-judged-there", "Not judged there", fault.getMessage());
  }

  @ExceptionHandler
  ProblemDetail unknown(UnknownPlan fault) {
    return of(HttpStatus.NOT_FOUND, "unknown-plan", "No such plan", fault.getMessage());
  }

  @ExceptionHandler
  ProblemDetail unknown(UnknownProfile fault) {
    return of(HttpStatus.BAD_REQUEST, "unknown-profile", "No such profile", fault.getMessage());
  }

  @ExceptionHandler
  ProblemDetail unusable(Tries.NotANumber fault) {
    return of(
        HttpStatus.BAD_REQUEST, "unusable-tries", "No such number of tries", fault.getMessage());
  }

  @ExceptionHandler
  ProblemDetail unknown(UnknownPage fault) {
    return of(HttpStatus.NOT_FOUND, "unknown-page", "No such page", fault.getMessage());
  }

  @ExceptionHandler
  ProblemDetail internal(RuntimeException fault) {
    LOG.error("fault of the program: {}", fault.getClass().getName(), fault);
    return of(
        HttpStatus.INTERNAL_SERVER_ERROR,
        "internal",
        "Bonewright itself is at fault",
        "Nothing was reviewed. The log of the service names the fault.");
  }

  private static ProblemDetail of(
      HttpStatus status, String kind, String title, @org.jspecify.annotations.Nullable String say) {
    ProblemDetail detail = ProblemDetail.forStatusAndDetail(status, String.valueOf(say));
    detail.setType(URI.create(KIND + kind));
    detail.setTitle(title);
    return detail;
  }
}
