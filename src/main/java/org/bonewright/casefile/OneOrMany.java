package org.bonewright.casefile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A list that may be written as its only element, without brackets. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface OneOrMany {

  /**
   * A word that may stand instead and leaves the list empty, such as {@code all}; none if empty.
   */
  String word() default "";
}
