package org.bonewright.server;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.bonewright.server.rest.Rulebook;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.bind.BindException;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.web.server.WebServer;
import org.springframework.boot.web.server.WebServerException;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.event.ContextClosedEvent;

/** The service as a whole. It stores no case, and opens no connection of its own. */
@SpringBootApplication
public class Service {

  /** More would only wait for the processor: a review computes and waits for nothing. */
  private static final int MOST_THREADS = 16;

  /** A running service. */
  public static final class Running implements AutoCloseable {

    private final ConfigurableApplicationContext context;
    private final CountDownLatch closed = new CountDownLatch(1);

    private Running(ConfigurableApplicationContext context) {
      this.context = context;
      context.addApplicationListener(
          event -> {
            if (event instanceof ContextClosedEvent) {
              closed.countDown();
            }
          });
    }

    /** Return the port that it listens on. */
    public int port() {
      return Optional.of((WebServerApplicationContext) context)
          .map(WebServerApplicationContext::getWebServer)
          .map(WebServer::getPort)
          .orElseThrow();
    }

    /**
     * Wait until it is told to end.
     *
     * @throws InterruptedException if the waiting thread is
     */
    public void await() throws InterruptedException {
      closed.await();
    }

    @Override
    public void close() {
      context.close();
    }
  }

  /** Says that the service cannot listen where it was told to. */
  public static final class CannotListen extends Exception {

    private static final long serialVersionUID = 1L;

    private CannotListen(String reason, Throwable cause) {
      super(reason, cause);
    }
  }

  /**
   * Start it, warm: when this returns, the first review takes no longer than later ones.
   *
   * @param address name or number of the address to listen on
   * @param port 0 to 65535; 0 takes a free one
   * @throws CannotListen if the port is taken or the address is not one of this machine
   */
  public static Running start(String address, int port) throws CannotListen {
    return start(address, port, Rulebook.published());
  }

  /**
   * Start it, warm, with rules of one's own choice.
   *
   * @param address name or number of the address to listen on
   * @param port 0 to 65535; 0 takes a free one
   * @param rulebook by what it judges
   * @throws CannotListen if the port is taken or the address is not one of this machine
   */
  public static Running start(String address, int port, Rulebook rulebook) throws CannotListen {
    SpringApplication application = new SpringApplication(Service.class);
    application.addInitializers(
        context -> context.getBeanFactory().registerSingleton("rulebook", rulebook));
    application.setDefaultProperties(
        Map.ofEntries(
            Map.entry("server.address", address),
            Map.entry("server.port", port),
            Map.entry("server.tomcat.threads.max", MOST_THREADS),
            // what is too large is thrown away unread, so that the sender hears why
            Map.entry("server.tomcat.max-swallow-size", "64MB"),
            Map.entry("server.shutdown", "graceful"),
            Map.entry("spring.main.banner-mode", "off"),
            Map.entry("spring.main.log-startup-info", false),
            Map.entry("spring.jmx.enabled", false),
            Map.entry("springdoc.api-docs.path", "/api/openapi"),
            Map.entry("springdoc.swagger-ui.path", "/api/docs"),
            Map.entry("springdoc.swagger-ui.validator-url", "none"),
            Map.entry("springdoc.swagger-ui.try-it-out-enabled", true)));
    try {
      return new Running(application.run());
    } catch (RuntimeException fault) {
      if (has(fault, PortInUseException.class)) {
        throw new CannotListen("port " + port + " is taken", fault);
      }
      if (has(fault, WebServerException.class) || has(fault, BindException.class)) {
        throw new CannotListen("cannot listen on " + address + ", port " + port, fault);
      }
      throw fault;
    }
  }

  private static boolean has(Throwable fault, Class<? extends Throwable> kind) {
    return Stream.<Throwable>iterate(fault, Objects::nonNull, Throwable::getCause)
        .anyMatch(kind::isInstance);
  }
}
