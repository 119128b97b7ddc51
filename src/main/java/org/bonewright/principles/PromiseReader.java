package org.bonewright.principles;

import java.util.List;

/** Reads the cards of promises. A fault in one is an exception, as in every card. */
final class PromiseReader {

  private PromiseReader() {}

  /** Return whether a card is that of a promise; what else it may be is for others to say. */
  static boolean isPromise(CardText text) {
    return text.optionalText("kind").filter("promise"::equals).isPresent();
  }

  /**
   * Read a promise.
   *
   * @param id the id that the file's name gives
   * @param text the text
   * @throws IllegalStateException if a field is missing, unknown or of the wrong type, the id is
   *     not the file's name, or no test proves it
   */
  static Promise read(String id, CardText text) {
    if (!text.text("id").equals(id)) {
      throw new IllegalStateException(id + ": the id in the card is another");
    }
    if (!text.text("kind").equals("promise")) {
      throw new IllegalStateException(id + ": kind is not promise");
    }
    List<String> provedBy = text.texts("provedBy");
    if (provedBy.isEmpty()) {
      throw new IllegalStateException(id + ": a promise that no test proves");
    }
    Promise promise =
        new Promise(
            id,
            text.text("title"),
            text.text("statement"),
            text.text("why"),
            provedBy,
            text.parts("sources").stream().map(CardReader::source).toList(),
            text.texts("awaiting"),
            text.text("reviewedBy"),
            text.text("since"));
    text.done();
    return promise;
  }
}
