package org.bonewright.server.rest;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.bonewright.handbook.HandbookSite;
import org.springframework.stereotype.Component;

/**
 * The handbook of the rules by which the service judges. It is made when it is first asked for, and
 * kept; the document to print by itself, since that takes longest and should stop no reader of the
 * pages.
 */
@Component
class HandbookShelf {

  private final Once<Map<String, String>> files;
  private final Once<byte[]> pdf;

  HandbookShelf(Rulebook rulebook) {
    Once<HandbookSite> site = new Once<>(() -> HandbookSite.of(rulebook.rules()));
    this.files = new Once<>(() -> site.get().files());
    this.pdf = new Once<>(() -> site.get().pdf());
  }

  /** Return the bytes of a file; empty where there is none of that path. */
  Optional<byte[]> file(String path) {
    return path.equals(HandbookSite.PDF)
        ? Optional.of(pdf.get())
        : Optional.ofNullable(files.get().get(path))
            .map(text -> text.getBytes(StandardCharsets.UTF_8));
  }
}
