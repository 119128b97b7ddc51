package org.bonewright.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.handbook.HandbookSite;
import org.bonewright.page.ReviewPage;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.bonewright.server.rest.Rulebook;
import org.bonewright.shelf.UsualShelf;
import org.bonewright.site.SiteReader;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The service as a client meets it, over HTTP on the loopback address. */
class ServiceTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static Service.Running service;

  @BeforeAll
  static void start() throws Service.CannotListen {
    service = Service.start("127.0.0.1", 0);
  }

  @AfterAll
  static void end() {
    service.close();
  }

  static Stream<Path> demos() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("cases", "demo"))) {
      return folders.map(folder -> folder.resolve("case.json")).sorted().toList().stream();
    }
  }

  @Nested
  class Reviews {

    @ParameterizedTest
    @MethodSource("org.bonewright.server.ServiceTest#demos")
    void are_byte_for_byte_what_the_command_line_prints(Path file) throws Exception {
      byte[] body = Files.readAllBytes(file);
      HttpResponse<byte[]> answer = post("/api/reviews", "application/json", body);
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.headers().firstValue("content-type")).hasValue("application/json");
      assertThat(new String(answer.body(), StandardCharsets.UTF_8))
          .isEqualTo(new JsonReport().render(review(body)));
    }

    @Test
    void come_as_text_where_text_is_asked_for() throws Exception {
      byte[] body = Files.readAllBytes(demos().findFirst().orElseThrow());
      HttpResponse<byte[]> answer = post("/api/reviews", "text/plain", body);
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(new String(answer.body(), StandardCharsets.UTF_8))
          .isEqualTo(new TextReport(false).render(review(body)));
    }

    @Test
    void come_as_a_page_where_a_page_is_asked_for() throws Exception {
      byte[] body = Files.readAllBytes(demos().findFirst().orElseThrow());
      HttpResponse<byte[]> answer = post("/api/reviews", "text/html", body);
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(new String(answer.body(), StandardCharsets.UTF_8))
          .isEqualTo(
              ReviewPage.render(new Intake().read(body).caseFile().orElseThrow(), review(body)));
    }

    @Test
    void are_kept_by_nobody_on_the_way() throws Exception {
      byte[] body = Files.readAllBytes(demos().findFirst().orElseThrow());
      assertThat(
              post("/api/reviews", "application/json", body).headers().firstValue("cache-control"))
          .hasValue("no-store");
    }

    @Test
    void of_an_unusable_case_list_every_problem_with_its_place() throws Exception {
      String text =
          Files.readString(demos().findFirst().orElseThrow())
              .replaceFirst("\"side\": \"\\w+\"", "\"side\": \"lefft\"")
              .replaceFirst("\"ageYears\": \\d+", "\"ageYears\": 700");
      HttpResponse<byte[]> answer =
          post("/api/reviews", "application/json", text.getBytes(StandardCharsets.UTF_8));
      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(answer.headers().firstValue("content-type")).hasValue("application/problem+json");
      JsonNode problem = JSON.readTree(answer.body());
      assertThat(problem.path("type").asString()).isEqualTo("urn:bonewright:problem:case-unusable");
      assertThat(problem.path("status").asInt()).isEqualTo(422);
      List<String> pointers =
          problem.path("problems").values().stream()
              .map(p -> p.path("pointer").asString())
              .toList();
      assertThat(pointers).contains("/bone/side", "/patient/ageYears");
      assertThat(problem.path("problems").path(0).path("place").asString()).contains("line");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{", "null", "\"case\"", "not json at all"})
    void of_what_is_no_case_are_refused_in_plain_words(String text) throws Exception {
      HttpResponse<byte[]> answer =
          post("/api/reviews", "application/json", text.getBytes(StandardCharsets.UTF_8));
      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(JSON.readTree(answer.body()).path("problems")).isNotEmpty();
    }

    @Test
    void of_more_than_a_megabyte_are_refused_unread() throws Exception {
      byte[] tenMegabytes = " ".repeat(10 * 1024 * 1024).getBytes(StandardCharsets.UTF_8);
      HttpResponse<byte[]> answer = post("/api/reviews", "application/json", tenMegabytes);
      assertThat(answer.statusCode()).isEqualTo(413);
      assertThat(JSON.readTree(answer.body()).path("detail").asString()).contains("1 MB");
    }

    @Test
    void are_posted_as_json_and_nothing_else() throws Exception {
      HttpRequest request =
          HttpRequest.newBuilder(uri("/api/reviews"))
              .header("Content-Type", "text/xml")
              .POST(HttpRequest.BodyPublishers.ofString("<case/>"))
              .build();
      HttpResponse<byte[]> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
      assertThat(answer.statusCode()).isEqualTo(415);
      assertThat(answer.headers().firstValue("content-type")).hasValue("application/problem+json");
      assertThat(get("/api/reviews").statusCode()).isEqualTo(405);
      assertThat(
              post("/api/reviews", "image/png", "{}".getBytes(StandardCharsets.UTF_8)).statusCode())
          .isEqualTo(406);
    }
  }

  @Nested
  class Explanations {

    private static final Path FEMUR = Path.of("cases/demo/femur-three-operations/case.json");

    private static HttpResponse<byte[]> explained(String query, String accept) throws Exception {
      return post("/api/explanations?" + query, accept, Files.readAllBytes(FEMUR));
    }

    @Test
    void tell_rules_limits_and_sources() throws Exception {
      JsonNode one =
          JSON.readTree(explained("principle=plate-span-ratio&on=op-1", "application/json").body())
              .path("explanations")
              .path(0);
      assertThat(one.path("subject").asString()).isEqualTo("op-1");
      assertThat(one.path("rules").isEmpty()).isFalse();
      assertThat(one.path("limits").isEmpty()).isFalse();
      assertThat(one.path("verdict").path("sources").isEmpty()).isFalse();
    }

    @Test
    void tell_as_text_what_would_turn_a_verdict_on_a_plan() throws Exception {
      HttpResponse<byte[]> answer =
          explained("principle=five-deep-samples&on=plan-a&changes=true", "text/plain");
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(new String(answer.body(), StandardCharsets.UTF_8))
          .contains("WHAT COULD BE DRAWN OTHERWISE", "five deep samples");
    }

    @Test
    void of_what_is_not_there_are_a_problem_that_says_what_is() throws Exception {
      HttpResponse<byte[]> elsewhere =
          explained("principle=plate-span-ratio&on=op-9", "application/json");
      assertThat(elsewhere.statusCode()).isEqualTo(404);
      assertThat(JSON.readTree(elsewhere.body()).path("detail").asString()).contains("op-1");
      assertThat(explained("principle=nobody&on=op-1", "application/json").statusCode())
          .isEqualTo(404);
      assertThat(explained("on=op-1", "application/json").statusCode()).isEqualTo(400);
    }
  }

  @Nested
  class Improvements {

    private static final Path FEMUR = Path.of("cases/demo/femur-three-operations/case.json");

    private HttpResponse<byte[]> improved(String query, String accept) throws Exception {
      return post("/api/improvements" + query, accept, Files.readAllBytes(FEMUR));
    }

    @Test
    void tell_steps_and_the_plan_drawn_so() throws Exception {
      HttpResponse<byte[]> answer = improved("?plan=plan-a", "application/json");
      assertThat(answer.statusCode()).isEqualTo(200);
      JsonNode json = JSON.readTree(answer.body());
      assertThat(json.path("outcome").asString()).isEqualTo("found");
      assertThat(json.at("/drawn/stages/0/samples/deepSamples").asInt()).isEqualTo(5);
    }

    @Test
    void of_the_chosen_plan_come_as_text_where_text_is_asked_for() throws Exception {
      HttpResponse<byte[]> answer = improved("", "text/plain");
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(new String(answer.body(), StandardCharsets.UTF_8))
          .contains("Options to discuss, not orders", "five deep samples");
    }

    @Test
    void of_a_plan_that_is_not_there_are_a_problem_that_says_what_is() throws Exception {
      HttpResponse<byte[]> answer = improved("?plan=plan-z", "application/json");
      assertThat(answer.statusCode()).isEqualTo(404);
      assertThat(JSON.readTree(answer.body()).path("detail").asString())
          .contains("no plan plan-z", "plan-a");
      byte[] unusable = "{}".getBytes(StandardCharsets.UTF_8);
      assertThat(post("/api/improvements", "application/json", unusable).statusCode())
          .isEqualTo(422);
    }

    @Test
    void judge_no_more_plans_than_were_asked_for() throws Exception {
      HttpResponse<byte[]> answer = improved("?tries=2", "application/json");
      assertThat(answer.statusCode()).isEqualTo(200);
      JsonNode json = JSON.readTree(answer.body());
      assertThat(json.path("most").asInt()).isEqualTo(2);
      assertThat(json.path("judged").asInt()).isBetween(1, 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3", "5001", "99999999999", "many", ""})
    void with_a_number_of_tries_that_is_none_are_a_problem_that_tells_the_range(String tries)
        throws Exception {
      for (String accept : List.of("application/json", "text/plain")) {
        HttpResponse<byte[]> answer = improved("?tries=" + tries, accept);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.headers().firstValue("content-type"))
            .hasValue("application/problem+json");
        JsonNode problem = JSON.readTree(answer.body());
        assertThat(problem.path("type").asString())
            .isEqualTo("urn:bonewright:problem:unusable-tries");
        assertThat(problem.path("detail").asString()).contains("1 to 5000", "\"" + tries + "\"");
      }
    }

    @Test
    void say_in_the_description_of_the_api_how_many_tries_may_be_asked_for() throws Exception {
      JsonNode parameters =
          JSON.readTree(get("/api/openapi").body())
              .at("/paths/~1api~1improvements/post/parameters");
      assertThat(parameters)
          .anySatisfy(
              each -> {
                assertThat(each.path("name").asString()).isEqualTo("tries");
                assertThat(each.at("/schema/minimum").asInt()).isEqualTo(1);
                assertThat(each.at("/schema/maximum").asInt()).isEqualTo(5000);
                assertThat(each.at("/schema/default").asInt()).isEqualTo(150);
              });
    }
  }

  @Nested
  class Profiles {

    @Test
    void are_asked_for_with_a_request() throws Exception {
      byte[] body = Files.readAllBytes(demos().findFirst().orElseThrow());
      HttpResponse<byte[]> answer = post("/api/reviews?profile=exam", "application/json", body);
      assertThat(answer.statusCode()).isEqualTo(200);
      JsonNode review = JSON.readTree(answer.body());
      assertThat(review.at("/versions/profile").asString()).isEqualTo("exam");
      assertThat(review.at("/table/rows").size()).isLessThan(RuleSet.built().cards().size());
    }

    @Test
    void that_do_not_exist_are_a_bad_request_that_names_those_that_do() throws Exception {
      byte[] body = Files.readAllBytes(demos().findFirst().orElseThrow());
      HttpResponse<byte[]> answer = post("/api/reviews?profile=night", "application/json", body);
      assertThat(answer.statusCode()).isEqualTo(400);
      JsonNode problem = JSON.readTree(answer.body());
      assertThat(problem.path("type").asString())
          .isEqualTo("urn:bonewright:problem:unknown-profile");
      assertThat(problem.path("detail").asString()).contains("night", "default, exam");
    }
  }

  @Nested
  class A_site {

    @Test
    void is_judged_by_and_shown_where_the_service_was_started_with_it() throws Exception {
      RuleSet published = RuleSet.built();
      RuleSet local =
          published.with(
              new SiteReader(published)
                  .read(Files.readAllBytes(Path.of("sites/example.json")))
                  .changes()
                  .orElseThrow());
      Service.Running ours = service;
      try (Service.Running with =
          Service.start("127.0.0.1", 0, new Rulebook(local, UsualShelf.shelf(), local.usual()))) {
        service = with;
        byte[] body = Files.readAllBytes(demos().findFirst().orElseThrow());
        JsonNode review = JSON.readTree(post("/api/reviews", "application/json", body).body());
        assertThat(review.at("/versions/site/name").asString())
            .isEqualTo("example-district-hospital");
        assertThat(review.has("localLimits")).isTrue();
        for (JsonNode principle : JSON.readTree(get("/api/principles").body()).path("principles")) {
          if (principle.path("id").asString().equals("five-deep-samples")) {
            assertThat(principle.at("/local/0/local").asString()).isEqualTo("3");
            assertThat(principle.at("/local/0/published").asString()).isEqualTo("5");
            assertThat(principle.path("profiles")).hasSize(2);
          }
        }
      } finally {
        service = ours;
      }
    }
  }

  @Nested
  class Checks {

    @Test
    void of_a_usable_case_say_so_and_what_it_lacks() throws Exception {
      byte[] body = Files.readAllBytes(Path.of("cases/demo/tibia-minimum-set/case.json"));
      JsonNode result = JSON.readTree(post("/api/checks", "application/json", body).body());
      assertThat(result.path("usable").asBoolean()).isTrue();
      assertThat(result.path("problems")).isEmpty();
    }

    @Test
    void of_an_unusable_case_are_answered_all_the_same() throws Exception {
      HttpResponse<byte[]> answer =
          post("/api/checks", "application/json", "{}".getBytes(StandardCharsets.UTF_8));
      assertThat(answer.statusCode()).isEqualTo(200);
      JsonNode result = JSON.readTree(answer.body());
      assertThat(result.path("usable").asBoolean()).isFalse();
      assertThat(result.path("problems")).isNotEmpty();
    }
  }

  @Nested
  class The_handbook {

    @Test
    void is_byte_for_byte_what_the_command_line_writes() throws Exception {
      Map<String, String> files = HandbookSite.of(RuleSet.built()).files();
      for (String path :
          List.of("index.html", "principles/plate-span-ratio.html", "search-index.js")) {
        HttpResponse<byte[]> answer = get("/handbook/" + path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).isEqualTo(files.get(path));
      }
      assertThat(get("/handbook/").body()).isEqualTo(get("/handbook/index.html").body());
    }

    @ParameterizedTest
    @CsvSource({
      "/handbook/, text/html;charset=UTF-8",
      "/handbook/handbook.css, text/css;charset=UTF-8",
      "/handbook/search.js, text/javascript;charset=UTF-8"
    })
    void says_what_each_file_is(String path, String type) throws Exception {
      assertThat(get(path).headers().firstValue("content-type")).hasValue(type);
    }

    @Test
    void is_found_without_the_last_stroke() throws Exception {
      HttpResponse<byte[]> answer = get("/handbook");
      assertThat(answer.statusCode()).isEqualTo(302);
      assertThat(answer.headers().firstValue("location")).hasValue("/handbook/");
    }

    @Test
    void says_that_it_has_no_such_page() throws Exception {
      HttpResponse<byte[]> answer = get("/handbook/principles/none.html");
      assertThat(answer.statusCode()).isEqualTo(404);
      assertThat(JSON.readTree(answer.body()).path("detail").asString()).contains("/handbook/");
      assertThat(get("/handbook/../../etc/passwd").statusCode()).isIn(400, 404);
    }
  }

  @Nested
  class Catalogue {

    @Test
    void tells_each_principle_that_it_lists() throws Exception {
      JsonNode list = JSON.readTree(get("/api/principles").body());
      assertThat(list.path("principles")).hasSameSizeAs(RuleSet.built().cards());
      for (JsonNode entry : list.path("principles")) {
        String id = entry.path("id").asString();
        HttpResponse<byte[]> one = get("/api/principles/" + id);
        assertThat(one.statusCode()).as(id).isEqualTo(200);
        JsonNode principle = JSON.readTree(one.body());
        assertThat(principle.path("statement").asString()).isNotBlank();
        assertThat(principle.path("sources")).isNotEmpty();
      }
    }

    @Test
    void knows_no_principle_that_does_not_exist() throws Exception {
      HttpResponse<byte[]> answer = get("/api/principles/plate-too-blue");
      assertThat(answer.statusCode()).isEqualTo(404);
      assertThat(JSON.readTree(answer.body()).path("detail").asString()).contains("plate-too-blue");
    }

    @Test
    void tells_every_measure() throws Exception {
      assertThat(JSON.readTree(get("/api/measures").body()).path("measures"))
          .hasSameSizeAs(RuleSet.built().definitions());
    }

    @Test
    void serves_the_schemas_of_a_case_and_of_a_site() throws Exception {
      assertThat(JSON.readTree(get("/api/schema/site").body()).path("$id").asString())
          .contains("schema/site/1");
      assertThat(JSON.readTree(get("/api/schema/case").body()).path("$schema").asString())
          .contains("2020-12");
    }
  }

  @Test
  void is_ready_once_it_has_started() throws Exception {
    HttpResponse<byte[]> answer = get("/api/health");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(JSON.readTree(answer.body()).path("status").asString()).isEqualTo("ready");
  }

  @Test
  void describes_every_path_of_its_api() throws Exception {
    JsonNode paths = JSON.readTree(get("/api/openapi").body()).path("paths");
    assertThat(paths.propertyNames())
        .containsExactlyInAnyOrder(
            "/api/reviews",
            "/api/explanations",
            "/api/improvements",
            "/api/checks",
            "/api/principles",
            "/api/principles/{id}",
            "/api/measures",
            "/api/schema/case",
            "/api/schema/site",
            "/api/health");
    assertThat(get("/api/docs").statusCode()).isIn(200, 302);
  }

  @Test
  void answers_an_unknown_path_with_a_problem() throws Exception {
    HttpResponse<byte[]> answer = get("/api/nothing-here");
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.headers().firstValue("content-type")).hasValue("application/problem+json");
  }

  @Test
  void says_so_when_its_port_is_taken() {
    assertThatThrownBy(() -> Service.start("127.0.0.1", service.port()))
        .isInstanceOf(Service.CannotListen.class)
        .hasMessageContaining("taken");
  }

  @Test
  void says_so_when_the_address_is_not_one_of_this_machine() {
    assertThatThrownBy(() -> Service.start("192.0.2.1", 0))
        .isInstanceOf(Service.CannotListen.class)
        .hasMessageContaining("192.0.2.1");
    assertThatThrownBy(() -> Service.start("no such place", 0))
        .isInstanceOf(Service.CannotListen.class);
  }

  private static Review review(byte[] body) {
    return new Reviewer(RuleSet.built()).review(new Intake().read(body).caseFile().orElseThrow());
  }

  private static URI uri(String path) {
    return URI.create("http://127.0.0.1:" + service.port() + path);
  }

  private static HttpResponse<byte[]> get(String path) throws IOException, InterruptedException {
    return CLIENT.send(
        HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  private static HttpResponse<byte[]> post(String path, String accept, byte[] body)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(uri(path))
            .header("Content-Type", "application/json")
            .header("Accept", accept)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body))
            .build();
    return CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
  }
}
