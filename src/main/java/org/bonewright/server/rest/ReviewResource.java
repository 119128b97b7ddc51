package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.Optional;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Reviews a case that comes with the request; nothing of it is kept. */
@RestController
@RequestMapping(path = "/api/reviews", consumes = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Cases")
class ReviewResource {

  private final Reviews reviews;

  ReviewResource(Reviews reviews) {
    this.reviews = reviews;
  }

  @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
  @Operation(
      summary = "Review a case",
      description =
          "Judges every operation and plan of the case against the principles. The case is not"
              + " kept. The answer is what the command line prints with --format json; with Accept"
              + " text/html a page to print, with text/plain the text. The profile says which"
              + " principles are shown; all are judged. Decision support, not a decision.")
  @TakesCase
  @ApiResponse(responseCode = "200", description = "The review.")
  @ApiResponse(
      responseCode = "400",
      description = "There is no such profile; those that there are are named.",
      content = @Content(mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE))
  ResponseEntity<byte[]> json(
      HttpServletRequest request,
      @RequestParam(name = "profile", required = false) Optional<String> profile)
      throws IOException, CaseBody.TooLarge, UnusableCase, UnknownProfile {
    return Answer.json(new JsonReport().render(reviews.review(CaseBody.of(request), profile)));
  }

  @PostMapping(produces = MediaType.TEXT_HTML_VALUE)
  @Operation(hidden = true)
  ResponseEntity<byte[]> html(
      HttpServletRequest request,
      @RequestParam(name = "profile", required = false) Optional<String> profile)
      throws IOException, CaseBody.TooLarge, UnusableCase, UnknownProfile {
    return Answer.html(reviews.page(CaseBody.of(request), profile));
  }

  @PostMapping(produces = MediaType.TEXT_PLAIN_VALUE)
  @Operation(hidden = true)
  ResponseEntity<byte[]> text(
      HttpServletRequest request,
      @RequestParam(name = "profile", required = false) Optional<String> profile)
      throws IOException, CaseBody.TooLarge, UnusableCase, UnknownProfile {
    return Answer.plain(
        new TextReport(false).render(reviews.review(CaseBody.of(request), profile)));
  }
}
