package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bonewright.handbook.model.Run;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;

/** Turns ids of principles and measures within a text into their titles, with links. */
final class Mentions {

  private static final Pattern ID = Pattern.compile("[a-z]+(?:-[a-z0-9]+)+");

  private final Map<String, Run.Link> known = new TreeMap<>();

  Mentions(RuleSet rules) {
    rules.definitions().forEach(m -> known.put(m.id(), new Run.Link(m.title(), Places.of(m))));
    for (Card card : rules.cards()) {
      known.put(card.id(), new Run.Link(card.title(), Places.of(card)));
    }
  }

  /** Return a text with links. */
  Text in(String words) {
    List<Run> runs = new ArrayList<>();
    Matcher id = ID.matcher(words);
    int from = 0;
    while (id.find()) {
      Run.Link link = known.get(id.group());
      if (link != null) {
        if (id.start() > from) {
          runs.add(new Run.Plain(words.substring(from, id.start())));
        }
        runs.add(link);
        from = id.end();
      }
    }
    if (from < words.length()) {
      runs.add(new Run.Plain(words.substring(from)));
    }
    return new Text(runs);
  }
}
