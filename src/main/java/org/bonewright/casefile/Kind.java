package org.bonewright.casefile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The word in the field {@code kind} by which one alternative of a sealed interface is picked. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Kind {

  /** The word as written in the file, for example {@code plate}. */
  String value();
}
