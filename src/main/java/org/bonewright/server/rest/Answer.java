package org.bonewright.server.rest;

import java.nio.charset.StandardCharsets;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** A text as the body of an answer, byte for byte. Nothing between here and the reader keeps it. */
final class Answer {

  private Answer() {}

  static ResponseEntity<byte[]> json(String text) {
    return of(text, MediaType.APPLICATION_JSON);
  }

  static ResponseEntity<byte[]> plain(String text) {
    return of(text, new MediaType(MediaType.TEXT_PLAIN, StandardCharsets.UTF_8));
  }

  static ResponseEntity<byte[]> html(String text) {
    return of(text, new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8));
  }

  private static ResponseEntity<byte[]> of(String text, MediaType type) {
    return ResponseEntity.ok()
        .contentType(type)
        .cacheControl(CacheControl.noStore())
        .body(text.getBytes(StandardCharsets.UTF_8));
  }
}
