package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.Optional;
import org.bonewright.change.Improver;
import org.bonewright.report.ImprovementJson;
import org.bonewright.report.ImprovementText;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Walks from a plan of a case that comes with the request; nothing of it is kept. */
@RestController
@RequestMapping(path = "/api/improvements", consumes = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Cases")
class ImprovementResource {

  private final Improvements improvements;

  ImprovementResource(Improvements improvements) {
    this.improvements = improvements;
  }

  @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
  @Operation(
      summary = "Look for another drawing of a plan",
      description =
          "Walks from the drawn plan by single moves of the cards to one that leaves nothing"
              + " critical or major unmet, if there is one. Tells the steps, what each turns, the"
              + " price, what stays unmet and why, and what is to be found out. Only the plan is"
              + " changed, no fact. The case is not kept. It may take a minute or two. With Accept"
              + " text/plain the text. Options to discuss, not orders.")
  @TakesCase
  @ApiResponse(responseCode = "200", description = "What was found, or that nothing was, and why.")
  @ApiResponse(
      responseCode = "400",
      description = "The number of tries is none, or out of range; the range is told.",
      content = @Content(mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE))
  @ApiResponse(
      responseCode = "404",
      description = "The case has no such plan; those that it has are told.",
      content = @Content(mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE))
  ResponseEntity<byte[]> json(
      HttpServletRequest request,
      @Parameter(description = "Id of the plan; else the chosen one, or the only one.")
          @RequestParam(name = "plan", required = false)
          Optional<String> plan,
      @Parameter(
              description = "Judge so many plans at the most. More take longer and may find more.",
              schema =
                  @Schema(
                      type = "integer",
                      minimum = "1",
                      maximum = "" + Improver.HIGHEST_MOST,
                      defaultValue = "" + Improver.USUAL_MOST))
          @RequestParam(name = "tries", required = false)
          Optional<String> tries)
      throws IOException, CaseBody.TooLarge, UnusableCase, UnknownPlan, Tries.NotANumber {
    return Answer.json(
        ImprovementJson.render(
            improvements.of(CaseBody.of(request), plan, Tries.of(tries)), improvements.versions()));
  }

  @PostMapping(produces = MediaType.TEXT_PLAIN_VALUE)
  @Operation(hidden = true)
  ResponseEntity<byte[]> text(
      HttpServletRequest request,
      @RequestParam(name = "plan", required = false) Optional<String> plan,
      @RequestParam(name = "tries", required = false) Optional<String> tries)
      throws IOException, CaseBody.TooLarge, UnusableCase, UnknownPlan, Tries.NotANumber {
    return Answer.plain(
        ImprovementText.render(
            improvements.of(CaseBody.of(request), plan, Tries.of(tries)), improvements.versions()));
  }
}
