package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.bonewright.server.Service;
import org.bonewright.server.rest.Rulebook;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Serves reviews over HTTP. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description =
        "Serves reviews over HTTP until it is stopped. It stores no case and asks nobody who they"
            + " are: by default only this machine can reach it.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 stopped, 2 cannot listen there or the site file cannot be used,",
      "  3 a fault of the program.",
      "",
      "Examples:",
      "  bonewright serve",
      "  bonewright serve --port 9000",
      "  bonewright serve --site site.json --profile exam",
      "  curl -H 'Content-Type: application/json' --data-binary @case.json \\",
      "       http://127.0.0.1:8080/api/reviews",
      "",
      "The API is described at /api/docs (a page) and /api/openapi (its OpenAPI document)."
    })
final class ServeCommand implements Callable<Integer> {

  private static final int HIGHEST_PORT = 65535;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      defaultValue = "8080",
      description = "Port, 0 to 65535; 0 takes a free one (default: ${DEFAULT-VALUE}).")
  private int port;

  @Option(
      names = "--address",
      paramLabel = "ADDRESS",
      defaultValue = "127.0.0.1",
      description = "Address to listen on (default: ${DEFAULT-VALUE}, this machine alone).")
  private String address = "127.0.0.1";

  @CommandLine.Mixin private RulesChoice choice = new RulesChoice();

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable, InterruptedException {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new Unusable("There is no port " + port + "; allowed: 0 to " + HIGHEST_PORT + ".");
    }
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Local local = choice.local();
    Rulebook rulebook = new Rulebook(local.rules(), local.shelf(), choice.profile(local.rules()));
    out.println("Starting; a few seconds.");
    out.flush();
    try (Service.Running service = Service.start(address, port, rulebook)) {
      String host = address.contains(":") ? "[" + address + "]" : address;
      if (!isLoopback()) {
        err.println(
            "Others can reach this address. Nobody is asked who they are, and nothing is encrypted.");
      }
      out.println(
          "Bonewright listens on http://"
              + host
              + ":"
              + service.port()
              + ". The API is described at /api/docs. Ctrl-C ends it.");
      out.flush();
      service.await();
      return ExitCodes.DONE;
    } catch (Service.CannotListen fault) {
      throw new Unusable(
          "The service did not start: " + fault.getMessage() + ". Try --port or --address.");
    }
  }

  private boolean isLoopback() {
    return address.startsWith("127.") || address.equals("localhost") || address.equals("::1");
  }
}
