package org.bonewright.casefile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The form that a text component must have. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Written {

  /** Regular expression that the whole text must match; valid in Java and in ECMA 262. */
  String regex();

  /** The same in words, for the person who got it wrong. */
  String inWords();
}
