/**
 * The documented API over HTTP. Enters: a request with a case, or a question about principles and
 * measures. Leaves: what the renderers make of a review, byte for byte as the command line shows
 * it, or problem details (RFC 9457). It computes nothing and keeps nothing.
 */
@NullMarked
package org.bonewright.server.rest;

import org.jspecify.annotations.NullMarked;
