/**
 * The service: starts and ends it. Enters: where to listen. Leaves: a running web server. It may
 * use its own subpackages; nothing but the command line may use it, so that a command starts
 * without it.
 */
@NullMarked
package org.bonewright.server;

import org.jspecify.annotations.NullMarked;
