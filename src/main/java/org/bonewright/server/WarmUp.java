package org.bonewright.server;

import java.io.IOException;
import java.io.InputStream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.server.rest.Reviews;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/**
 * Reviews a demonstration case over and over before the service says that it is ready: the rule
 * engine compiles as it runs, and the first reviews take many times as long as later ones.
 */
@Component
class WarmUp implements ApplicationRunner {

  private static final String DEMO = "/cases/demo/femur-three-operations/case.json";
  private static final int ROUNDS = 8;

  private final Reviews reviews;

  WarmUp(Reviews reviews) {
    this.reviews = reviews;
  }

  @Override
  public void run(ApplicationArguments arguments) throws IOException {
    byte[] demo = demo();
    for (int i = 0; i < ROUNDS; i++) {
      reviews.warm(demo);
    }
  }

  private static byte[] demo() throws IOException {
    try (InputStream in = CaseFile.class.getResourceAsStream(DEMO)) {
      if (in == null) {
        throw new IllegalStateException("built without " + DEMO);
      }
      return in.readAllBytes();
    }
  }
}
