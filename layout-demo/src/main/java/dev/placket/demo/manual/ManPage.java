package dev.placket.demo.manual;

import dev.placket.demo.options.OptionGroup;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of a command and its subcommands, in the macros of man(7). */
final class ManPage {
  private final StringBuilder roff = new StringBuilder();

  private ManPage() {}

  /** The page. */
  static String of(CommandLine line) {
    ManPage page = new ManPage();
    page.write(line);
    return page.roff.toString();
  }

  private void write(CommandLine line) {
    CommandSpec spec = line.getCommandSpec();
    String name = spec.name();
    macro(
        ".TH " + name.toUpperCase(java.util.Locale.ROOT) + " 1 \"\" \"" + spec.version()[0] + "\"");
    macro(".SH NAME");
    text(name + " - " + String.join(" ", spec.usageMessage().description()));
    macro(".SH SYNOPSIS");
    for (Map.Entry<String, CommandLine> each : line.getSubcommands().entrySet()) {
      String synopsis = each.getValue().getHelp().synopsis(0).replaceAll("\\s+", " ").strip();
      macro(".PP");
      text(Ansi.OFF.string(synopsis));
    }
    macro(".SH COMMANDS");
    for (Map.Entry<String, CommandLine> each : line.getSubcommands().entrySet()) {
      macro(".SS " + each.getKey());
      command(each.getValue().getCommandSpec());
    }
  }

  private void command(CommandSpec spec) {
    paragraphs(spec.usageMessage().description());
    for (PositionalParamSpec p : spec.positionalParameters()) {
      entry(p.paramLabel(), p.description());
    }
    OptionGroup.of(spec)
        .forEach(
            (group, options) -> {
              macro(".PP");
              text(group.heading() + ":");
              options.forEach(this::option);
            });
    paragraphs(spec.usageMessage().footer());
  }

  private void option(OptionSpec o) {
    String value = o.arity().max() > 0 ? " " + o.paramLabel() : "";
    entry(String.join(", ", o.names()) + value, o.description());
  }

  private void entry(String term, String[] description) {
    macro(".TP");
    macro(".B " + escaped(term));
    for (String line : description) {
      text(line);
    }
  }

  /**
   * Lines of a text of which an empty one parts paragraphs; what stands in is kept as it stands.
   */
  private void paragraphs(String[] lines) {
    macro(".PP");
    for (String line : lines) {
      if (line.isBlank()) {
        macro(".PP");
      } else if (line.startsWith(" ")) {
        macro(".br");
        text(line.strip());
      } else {
        text(line);
      }
    }
  }

  private void macro(String line) {
    roff.append(line).append('\n');
  }

  private void text(String line) {
    String plain = escaped(Ansi.OFF.string(line));
    // A line that begins with one of these would be taken for a macro.
    boolean like = plain.startsWith(".") || plain.startsWith("'");
    roff.append(like ? "\\&" : "").append(plain).append('\n');
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\e").replace("-", "\\-").replace("%%", "%");
  }
}
