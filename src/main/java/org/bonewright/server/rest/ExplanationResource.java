package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.bonewright.change.PlanChange;
import org.bonewright.report.ChangeText;
import org.bonewright.report.ExplanationJson;
import org.bonewright.report.ExplanationText;
import org.bonewright.review.Explanation;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Explains one verdict on a case that comes with the request; nothing of it is kept. */
@RestController
@RequestMapping(path = "/api/explanations", consumes = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Cases")
class ExplanationResource {

  private final Explanations explanations;

  ExplanationResource(Explanations explanations) {
    this.explanations = explanations;
  }

  @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
  @Operation(
      summary = "Explain a verdict",
      description =
          "Tells what was read and how it was worked out, the limits and where they come from,"
              + " which rule fired or which condition failed, and the sources. The case is not kept."
              + " Where a plan is named and the principle is judged on its stages, there is one"
              + " explanation for each. With changes=true the moves that the principle names are"
              + " tried on the plan, which takes some seconds. With Accept text/plain the text. Decision support, not a"
              + " decision.")
  @TakesCase
  @ApiResponse(responseCode = "200", description = "The explanation.")
  @ApiResponse(
      responseCode = "404",
      description = "There is no such principle, or it is not judged there; where it is, is told.",
      content = @Content(mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE))
  ResponseEntity<byte[]> json(
      HttpServletRequest request,
      @RequestParam(name = "principle") String principle,
      @RequestParam(name = "on") String on,
      @RequestParam(name = "changes", defaultValue = "false") boolean changes)
      throws IOException, CaseBody.TooLarge, UnusableCase, UnknownPrinciple, NotJudgedThere {
    byte[] body = CaseBody.of(request);
    List<Explanation> found = explanations.of(body, principle, on);
    return Answer.json(ExplanationJson.render(found, offered(body, found, changes)));
  }

  @PostMapping(produces = MediaType.TEXT_PLAIN_VALUE)
  @Operation(hidden = true)
  ResponseEntity<byte[]> text(
      HttpServletRequest request,
      @RequestParam(name = "principle") String principle,
      @RequestParam(name = "on") String on,
      @RequestParam(name = "changes", defaultValue = "false") boolean changes)
      throws IOException, CaseBody.TooLarge, UnusableCase, UnknownPrinciple, NotJudgedThere {
    byte[] body = CaseBody.of(request);
    List<Explanation> found = explanations.of(body, principle, on);
    return Answer.plain(
        ExplanationText.render(found)
            + offered(body, found, changes).map(all -> ChangeText.render(found, all)).orElse(""));
  }

  private Optional<List<PlanChange>> offered(byte[] body, List<Explanation> found, boolean wanted) {
    return wanted ? Optional.of(explanations.changes(body, found)) : Optional.empty();
  }
}
