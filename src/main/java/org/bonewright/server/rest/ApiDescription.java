package org.bonewright.server.rest;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import org.bonewright.review.Engine;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What stands at the head of the API's description. */
@Configuration
class ApiDescription {

  @Bean
  OpenAPI openApi() {
    return new OpenAPI()
        .info(
            new Info()
                .title("Bonewright")
                .version(Engine.VERSION)
                .license(new License().name("Apache-2.0"))
                .description(
                    "Reviews fixations of a broken long bone that failed or did not unite, and the"
                        + " plan for the next operation. Decision support, not a decision: it does"
                        + " not replace clinical judgement, imaging, local protocols or licensed"
                        + " practice. Cases are not kept; send no name, birth date or record"
                        + " number."));
  }
}
