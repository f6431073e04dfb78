package dev.placket.demo.options;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** What an option is for: the heading above it in the help and on the manual page. */
public enum OptionGroup {
  /** Paper and what is printed on it. */
  SHEETS("Paper and sheets", "--paper", "--blank", "--no-marks"),
  /** How pictures are read, sized and prepared. */
  PICTURES(
      "Pictures",
      "--at",
      "--for",
      "--density",
      "--keep-background",
      "--clear-colour",
      "--clear-enclosed",
      "--few-colours",
      "--allow-soft",
      "--font",
      "--strict",
      "--warn-line",
      "--warn-lettering",
      "--warn-gap"),
  /** What is written and printed, and where. */
  OUTPUT(
      "Output",
      "--out",
      "--overwrite",
      "--check",
      "--write",
      "--max-size",
      "--units",
      "--json",
      "--quiet"),
  /** Placing onto a workbook. */
  WORKBOOKS("Workbooks", "--onto", "--worksheet", "--window", "--labelled", "--tolerance"),
  /** What is refused as too large. */
  LIMITS(
      "Limits",
      "--limit",
      "--max-sheets",
      "--max-rows",
      "--max-pixels",
      "--max-preview",
      "--max-worksheets",
      "--max-cells",
      "--max-mebibytes"),
  /** The command itself. */
  HELP("Help", "--help", "--version");

  private final String heading;
  private final List<String> options;

  OptionGroup(String heading, String... options) {
    this.heading = heading;
    this.options = List.of(options);
  }

  /** The heading. */
  public String heading() {
    return heading;
  }

  /** The visible options of a command by group, both in the order of this class. */
  public static Map<OptionGroup, List<OptionSpec>> of(CommandSpec command) {
    Map<OptionGroup, List<OptionSpec>> groups = new LinkedHashMap<>();
    int grouped = 0;
    for (OptionGroup group : values()) {
      List<OptionSpec> its = new ArrayList<>();
      for (String name : group.options) {
        OptionSpec option = command.findOption(name);
        if (option != null) {
          its.add(option);
        }
      }
      grouped += its.size();
      if (!its.isEmpty()) {
        groups.put(group, its);
      }
    }
    if (grouped != command.options().size()) {
      throw new IllegalStateException(command.name() + " has an option without a group");
    }
    return groups;
  }

  /** Lists the options in the help of a command under their headings. */
  public static void inHelpOf(CommandLine command) {
    command
        .getHelpSectionMap()
        .put(
            UsageMessageSpec.SECTION_KEY_OPTION_LIST, help -> list(command.getCommandSpec(), help));
  }

  private static String list(CommandSpec command, Help help) {
    StringBuilder text = new StringBuilder();
    of(command)
        .forEach(
            (group, options) -> {
              Help.Layout layout =
                  help.createDefaultLayout(
                      command.options(), command.positionalParameters(), help.colorScheme());
              options.forEach(o -> layout.addOption(o, help.parameterLabelRenderer()));
              text.append(System.lineSeparator())
                  .append(group.heading)
                  .append(':')
                  .append(System.lineSeparator())
                  .append(layout);
            });
    return text.toString();
  }
}
