package org.bonewright.cli;

import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** The option that shows an answer as text or as JSON. */
final class FormatChoice {

  /** How the answer is shown. */
  enum Format {
    TEXT,
    JSON
  }

  /** Reads a format as help writes it. */
  static final class Reader extends WordReader<Format> {
    Reader() {
      super(Format.values());
    }
  }

  @Option(
      names = "--format",
      paramLabel = "text|json",
      converter = Reader.class,
      description = "How to show it: text (the default) or json.")
  private Format format = Format.TEXT;

  /** Return the answer in the format that is named; only that one is made. */
  String show(Supplier<String> text, Supplier<String> json) {
    return switch (format) {
      case TEXT -> text.get();
      case JSON -> json.get();
    };
  }
}
