package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.Hidden;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Shows the handbook: the same files as the command line writes. */
@RestController
@Hidden // for people, and no part of the API that programs use
class HandbookResource {

  private static final String START = "/handbook/";

  private final HandbookShelf shelf;

  HandbookResource(HandbookShelf shelf) {
    this.shelf = shelf;
  }

  @GetMapping("/handbook")
  ResponseEntity<Void> start() {
    return ResponseEntity.status(HttpStatus.FOUND).location(URI.create(START)).build();
  }

  @GetMapping(START + "{*path}")
  ResponseEntity<byte[]> file(@PathVariable String path) throws UnknownPage {
    String file = path.equals("/") ? "index.html" : path.substring(1);
    byte[] bytes = shelf.file(file).orElseThrow(() -> new UnknownPage(file));
    return ResponseEntity.ok()
        .contentType(type(file))
        .cacheControl(CacheControl.noCache())
        .body(bytes);
  }

  private static MediaType type(String file) {
    return switch (file.substring(file.lastIndexOf('.') + 1)) {
      case "html" -> new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8);
      case "css" -> new MediaType("text", "css", StandardCharsets.UTF_8);
      case "js" -> new MediaType("text", "javascript", StandardCharsets.UTF_8);
      default -> MediaType.APPLICATION_PDF;
    };
  }
}
