package org.bonewright.casefile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The closed range of numbers that a component accepts. On a list it holds for each element, on a
 * {@link Quantity} for both bounds. The limits catch slips of the pen and wrong units; they are not
 * clinical limits.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Between {

  /** Smallest number accepted. */
  double min();

  /** Largest number accepted. */
  double max();
}
