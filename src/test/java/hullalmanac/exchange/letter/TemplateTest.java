package hullalmanac.exchange.letter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Fields in braces, by examples of the published specification of the mustache language
 * (specs/interpolation.yml and specs/sections.yml of its public repository). Two things differ on
 * purpose: a plain text is not escaped for HTML, and a name that is not known is refused.
 */
class TemplateTest {
  private static String filled(String template, Map<String, String> fields) {
    return ((Template.Filled) Template.fill(template, fields)).text();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "No Interpolation;Hello from {Mustache}!;Hello from {Mustache}!",
        "Basic Interpolation;Hello, {{subject}}!;Hello, world!",
        "Triple Mustache;Hello, {{{subject}}}!;Hello, world!",
        "Ampersand;Hello, {{&subject}}!;Hello, world!",
        "Surrounding Whitespace;| {{string}} |;| --- |",
        "Interpolation With Padding;|{{ string }}|;|---|"
      })
  void fillsFieldsAsTheSpecificationHasIt(String name, String template, String expected) {
    assertThat(filled(template, Map.of("subject", "world", "string", "---"))).isEqualTo(expected);
  }

  @Test
  void leavesSignsOfHtmlAsTheyAre() {
    assertThat(filled("{{x}}", Map.of("x", "& \" < >"))).isEqualTo("& \" < >");
  }

  @Test
  void writesASectionOnlyWhereItsFieldIsNotEmpty() {
    String template =
        "Gulls{{#harbour}} at {{harbour}}{{/harbour}}{{^harbour}} at sea{{/harbour}}.";
    assertThat(filled(template, Map.of("harbour", "Quillhaven"))).isEqualTo("Gulls at Quillhaven.");
    assertThat(filled(template, Map.of("harbour", ""))).isEqualTo("Gulls at sea.");
  }

  /** A boat called by what looks like a field must not be read again. */
  @Test
  void doesNotFillWhatWasFilledIn() {
    assertThat(filled("{{boat}}", Map.of("boat", "{{owner}}", "owner", "x")))
        .isEqualTo("{{owner}}");
  }

  @ParameterizedTest
  @CsvSource({
    "{{bote}}, There is no field {{bote}}. There are {{boat}}.",
    "{{#bote}} at sea{{/bote}}, There is no field {{bote}}.",
    "{{boat, The braces do not match",
    "{{#boat}} x, The braces do not match",
    "{{> other}}, A text holds no other texts"
  })
  void refusesWhatCannotBeFilledWithASentence(String template, String sentence) {
    Template.Outcome outcome = Template.fill(template, Map.of("boat", "Siskin"));
    assertThat(((Template.Refused) outcome).sentence()).startsWith(sentence);
  }
}
