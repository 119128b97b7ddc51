package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import org.bonewright.casefile.checking.MinimumSet;
import org.bonewright.casefile.reading.Reading;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Checks a case without reviewing it. */
@RestController
@RequestMapping(path = "/api/checks", consumes = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Cases")
class CheckResource {

  /**
   * What a check found.
   *
   * @param usable whether the case can be reviewed
   * @param problems every problem and warning, in the order of the file
   * @param missing what of the minimum set for a useful review is not told; empty where the case
   *     cannot be used
   */
  record Result(boolean usable, List<ProblemView> problems, List<Gap> missing) {}

  /**
   * Something of the minimum set that is not told.
   *
   * @param pointer where it would stand
   * @param question what to ask
   */
  record Gap(String pointer, String question) {}

  private final Reviews reviews;

  CheckResource(Reviews reviews) {
    this.reviews = reviews;
  }

  @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
  @Operation(
      summary = "Check a case",
      description =
          "Lists every problem of a case, and what of the minimum set for a useful review it lacks."
              + " Reviews nothing, keeps nothing.",
      requestBody =
          @RequestBody(
              required = true,
              description = "A case file, at most 1 MB.",
              content = @Content(schema = @Schema(type = "object"))))
  Result check(HttpServletRequest request) throws IOException, CaseBody.TooLarge {
    Reading reading = reviews.read(CaseBody.of(request));
    return new Result(
        reading.caseFile().isPresent(),
        ProblemView.of(reading.problems()),
        reading.caseFile().stream()
            .flatMap(file -> new MinimumSet(file).missing().stream())
            .map(missing -> new Gap(missing.pointer(), missing.question()))
            .toList());
  }
}
