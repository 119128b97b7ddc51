package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.bonewright.casefile.reading.CaseSchema;
import org.bonewright.principles.Card;
import org.bonewright.report.CatalogueJson;
import org.bonewright.site.SiteSchema;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Tells the principles, the measures and the format of a case. */
@RestController
@RequestMapping(path = "/api", produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Catalogue")
class CatalogueResource {

  private final Reviews reviews;

  CatalogueResource(Reviews reviews) {
    this.reviews = reviews;
  }

  @GetMapping("/principles")
  @Operation(
      summary = "List the principles, the profiles that show each, and what the site has set")
  ResponseEntity<byte[]> principles() {
    return Answer.json(new CatalogueJson(reviews.rules()).principles());
  }

  @GetMapping("/principles/{id}")
  @Operation(summary = "Tell a principle: statement, limits, sources, open questions")
  ResponseEntity<byte[]> principle(@PathVariable String id) throws UnknownPrinciple {
    Card card =
        reviews
            .rules()
            .card(id)
            .or(
                () ->
                    reviews.rules().cards().stream()
                        .filter(other -> other.formerIds().contains(id))
                        .findFirst())
            .orElseThrow(() -> new UnknownPrinciple(id));
    return Answer.json(new CatalogueJson(reviews.rules()).principle(card));
  }

  @GetMapping("/measures")
  @Operation(summary = "List the measures: formula, unit, inputs, source")
  ResponseEntity<byte[]> measures() {
    return Answer.json(new CatalogueJson(reviews.rules()).measures());
  }

  @GetMapping("/schema/case")
  @Operation(summary = "The JSON Schema (draft 2020-12) of a case")
  ResponseEntity<byte[]> caseSchema() throws IOException {
    return schema(CaseSchema.RESOURCE);
  }

  @GetMapping("/schema/site")
  @Operation(summary = "The JSON Schema (draft 2020-12) of a site file")
  ResponseEntity<byte[]> siteSchema() throws IOException {
    return schema(SiteSchema.RESOURCE);
  }

  private static ResponseEntity<byte[]> schema(String resource) throws IOException {
    try (InputStream in = CaseSchema.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("built without its schema");
      }
      return Answer.json(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }
}
