package org.bonewright.casefile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The name of a component or word in the file, where it is not that of the record: {@code E},
 * {@code nonLocking}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
public @interface Named {

  /** The name as written in the file. */
  String value();
}
