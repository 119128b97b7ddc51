package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.bonewright.review.Engine;
import org.springframework.boot.availability.ApplicationAvailability;
import org.springframework.boot.availability.ReadinessState;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Tells whether the service is warm and ready. */
@RestController
@Tag(name = "Service")
class HealthResource {

  /**
   * How the service is.
   *
   * @param status ready, or starting
   * @param engine version of the engine
   * @param ruleSet version of the rule set
   */
  record Health(String status, String engine, String ruleSet) {}

  private final ApplicationAvailability availability;
  private final Reviews reviews;

  HealthResource(ApplicationAvailability availability, Reviews reviews) {
    this.availability = availability;
    this.reviews = reviews;
  }

  @GetMapping("/api/health")
  @Operation(summary = "Whether the service is ready: 200, or 503 while it warms up")
  ResponseEntity<Health> health() {
    boolean ready = availability.getReadinessState() == ReadinessState.ACCEPTING_TRAFFIC;
    return ResponseEntity.status(ready ? HttpStatus.OK : HttpStatus.SERVICE_UNAVAILABLE)
        .body(new Health(ready ? "ready" : "starting", Engine.VERSION, reviews.rules().version()));
  }
}
