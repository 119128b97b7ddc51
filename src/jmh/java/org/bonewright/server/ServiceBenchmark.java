package org.bonewright.server;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Requests a second over HTTP, for reviews and for what only reads and checks the same case. Service
 * and clients share the machine.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Threads(2)
@Warmup(iterations = 5, time = 4)
@Measurement(iterations = 5, time = 3)
public class ServiceBenchmark {

  private static final Path CASE = Path.of("cases/demo/femur-three-operations/case.json");

  private final HttpClient client = HttpClient.newHttpClient();
  private Service.Running service;

  /** Start the service, warm. */
  @Setup
  public void start() throws Service.CannotListen {
    service = Service.start("127.0.0.1", 0);
  }

  /** Stop it. */
  @TearDown
  public void stop() {
    service.close();
  }

  /** A review as JSON. */
  @Benchmark
  public byte[] review() throws IOException, InterruptedException {
    return posted("/api/reviews");
  }

  /** The same case, read and checked. */
  @Benchmark
  public byte[] check() throws IOException, InterruptedException {
    return posted("/api/checks");
  }

  private byte[] posted(String path) throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        client.send(
            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service.port() + path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofFile(CASE))
                .build(),
            HttpResponse.BodyHandlers.ofByteArray());
    if (answer.statusCode() != 200) {
      throw new IllegalStateException("status " + answer.statusCode());
    }
    return answer.body();
  }
}
