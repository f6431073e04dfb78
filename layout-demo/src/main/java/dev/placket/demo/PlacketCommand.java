package dev.placket.demo;

import picocli.CommandLine.Command;

/** The command without a subcommand: says what there is. */
@Command(
    name = "placket",
    version = "placket 0.1.0",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    synopsisSubcommandLabel = "COMMAND",
    description = "Fits garment drawings onto the ruled sheets of a spec pack.")
final class PlacketCommand {}
