package org.bonewright.server.rest;

import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.http.MediaType;

/**
 * Describes what takes a case and needs it usable: the body, and how one that is not is refused.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@RequestBody(
    required = true,
    description = "A case file, at most 1 MB; its schema is served at /api/schema/case.",
    content = @Content(schema = @Schema(type = "object")))
@ApiResponse(
    responseCode = "413",
    description = "More than 1 MB.",
    content = @Content(mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE))
@ApiResponse(
    responseCode = "422",
    description = "The case cannot be used; every problem is listed with its place.",
    content = @Content(mediaType = MediaType.APPLICATION_PROBLEM_JSON_VALUE))
@interface TakesCase {}
