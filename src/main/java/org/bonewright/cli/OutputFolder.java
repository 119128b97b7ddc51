package org.bonewright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A folder that many files are written to. */
final class OutputFolder {

  private final String named;
  private final Path folder;

  private OutputFolder(String named, Path folder) {
    this.named = named;
    this.folder = folder;
  }

  /**
   * Make the folder where there is none.
   *
   * @param named as the user named it
   * @param evenIfFull whether it may hold anything already
   * @throws Unusable if it is a file, is not empty, or cannot be made
   */
  static OutputFolder open(String named, boolean evenIfFull) throws Unusable {
    try {
      Path folder = Path.of(named);
      if (Files.exists(folder) && !Files.isDirectory(folder)) {
        throw new Unusable(named + " is a file; name a folder.");
      }
      Files.createDirectories(folder);
      try (Stream<Path> inside = Files.list(folder)) {
        if (!evenIfFull && inside.findAny().isPresent()) {
          throw new Unusable(
              named
                  + " is not empty; nothing was written. Name another folder, or add --force to write"
                  + " into it.");
        }
      }
      return new OutputFolder(named, folder);
    } catch (IOException | InvalidPathException e) {
      throw new Unusable(named + " cannot be made or read: no such place, or no right to write.");
    }
  }

  /** Return the path of a file in it. */
  Path path(String file) {
    return folder.resolve(file);
  }

  /**
   * Write a file, with the folders in between.
   *
   * @throws Unusable if that cannot be done
   */
  void write(String file, String text) throws Unusable {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Write a file, with the folders in between.
   *
   * @throws Unusable if that cannot be done
   */
  void write(String file, byte[] bytes) throws Unusable {
    Path target = path(file);
    try {
      Path parent = target.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
      Files.write(target, bytes);
    } catch (IOException e) {
      throw new Unusable(
          named + " cannot be written: " + file + " failed. Is there room, and a right to write?");
    }
  }
}
