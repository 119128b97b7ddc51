package org.bonewright.casefile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a component or a type means, in words for the person who fills in the file. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.TYPE})
public @interface Meaning {

  /** One sentence; becomes the description in the published schema. */
  String value();
}
