using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Endurance.Cli;

/// <summary>The generated help, with examples and exit codes below it.</summary>
internal sealed class ExampleHelpAction : SynchronousCommandLineAction
{
    private readonly HelpAction _generated;

    public ExampleHelpAction(HelpAction generated)
    {
        _generated = generated;

        // Fixed, so that the help does not depend on the window it is shown in.
        _generated.MaxWidth = 100;
    }

    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        using var generated = new StringWriter { NewLine = "\n" };
        parseResult.InvocationConfiguration.Output = generated;
        _generated.Invoke(parseResult);
        parseResult.InvocationConfiguration.Output = output;
        foreach (var line in generated.ToString().Trim().Split('\n'))
            output.WriteLine(line.TrimEnd());

        output.WriteLine();
        output.WriteLine(Examples(parseResult.CommandResult.Command.Name));
        return ExitCode.Met;
    }

    private static string Examples(string command) => command switch
    {
        "run" => """
            Examples:
              endurance run floatplane.yaml
                  Every failure case: minutes, what is lost first, what happens when.
              endurance run floatplane.yaml --out out/floatplane
                  The same, and plots, traces and results.json in a folder.
              endurance run floatplane.yaml --case engine_out --case alternator_failure
                  These cases alone.
              endurance run floatplane.yaml --format json > results.json
                  For another program: the result goes to standard output, warnings to standard error.

            Exit codes:
              0  every requirement is met, or there is none
              1  some requirement is not met
              2  the scenario, the command line or the folder is wrong
              3  the program itself failed
            """,
        "wiring" => """
            Examples:
              endurance wiring floatplane.yaml
                  Every wire of known gauge and length: current, drop, rating, protection, smallest gauge.
              endurance wiring floatplane.yaml --insulation 105 --load-type pitot_heat=resistive
                  Other insulation than 150 degC, and what one switch switches.

            Exit codes:
              0  no wire fails
              1  some wire fails
              2  the scenario or the command line is wrong
              3  the program itself failed
            """,
        "loads" => """
            Examples:
              endurance loads floatplane.yaml
                  By bus and phase, share of the alternator, amp-minutes beside the simulated minutes.
              endurance loads floatplane.yaml --format markdown > loads.md
                  The same, to hand to a reviewer.

            Exit codes:
              0  every alternator's share is within 80 %
              1  some alternator's share is above
              2  the scenario or the command line is wrong
              3  the program itself failed
            """,
        "report" => """
            Examples:
              endurance report floatplane.yaml --out floatplane.html --date 2026-05-02
                  Everything on one page that needs no network: to read, to print, to hand on.
              endurance report floatplane.yaml --out out/floatplane
                  The same as report.html in a folder; a second run replaces it.

            Exit codes:
              0  every requirement is met, or there is none
              1  some requirement is not met; the page is written all the same
              2  the scenario, the command line or the place to write to is wrong
              3  the program itself failed
            """,
        "watch" => """
            Examples:
              endurance watch floatplane.yaml
                  Open the address it prints; the page follows every save, and shows what is wrong in place.
              endurance watch floatplane.yaml --port 8014
                  Always at the same address.

            Only this machine can read the page. Without script, load it again by hand.

            Exit codes:
              0  the watch was ended, with Ctrl-C or SIGTERM
              2  there is no such file, the port is in use, or the command line is wrong
              3  the program itself failed
            """,
        "compare" => """
            Examples:
              endurance compare layouts.yaml
                  The scenario as drawn and each of its layouts: minutes, volts, heat, parts, single failures survived.
              endurance compare old.yaml new.yaml --case engine_out --out out/compare
                  Two files and their layouts, and a picture of the essential bus in one case.

            Exit codes:
              0  every requirement is met in every layout, or there is none
              1  some requirement is not met
              2  a scenario, the command line or the folder is wrong
              3  the program itself failed
            """,
        "check" => """
            Examples:
              endurance check floatplane.yaml
                  All errors and warnings at once, each with line and column.

            Exit codes:
              0  the scenario can be run
              2  it cannot
            """,
        "testcard" => """
            Examples:
              endurance testcard floatplane.yaml
                  The whole ground test as Markdown: objective, safety, numbered points with predictions.
              endurance testcard floatplane.yaml --out out/card
                  To print (testcard.html) and to fill in with a spreadsheet (testcard.csv).

            Exit codes:
              0  the card is written
              2  the scenario, the command line or the folder is wrong
              3  the program itself failed
            """,
        "reconcile" => """
            Examples:
              endurance reconcile floatplane.yaml testcard.csv
                  Readings beside predictions, likely causes, and the minutes before and after.
              endurance reconcile floatplane.yaml testcard.csv --date 2026-05-02 --out out/measured
                  The same in a folder, with measured.yaml to lay over the scenario.
              endurance run floatplane.yaml --overlay out/measured/measured.yaml
                  The scenario with the measured loads, in any command.

            Numbers stand with or without their unit, with a decimal point or a decimal comma; commas,
            semicolons or tabs separate; rows in any order; an empty cell was not measured. A column
            headed date gives rows their own day.

            Exit codes:
              0  with the measured loads every requirement is met, or there is none
              1  some requirement is not met
              2  the scenario, the card, the command line or the folder is wrong; nothing is written
              3  the program itself failed
            """,
        "battery" => """
            Examples:
              endurance battery floatplane.yaml
                  Minutes over current of every battery: now, new and warm, by both capacity models.
              endurance battery floatplane.yaml --battery ship_battery --amps 5 --amps 10 --to "10.5 V"
                  Two currents of one battery, to a terminal voltage.
              endurance battery floatplane.yaml --out out/floatplane
                  The same, and a plot of each battery in a folder.
              endurance battery floatplane.yaml --battery ship_battery --format json
                  For another program.

            Exit codes:
              0  the table is written
              2  the scenario, the command line or the folder is wrong
            """,
        "size" => """
            Examples:
              endurance size floatplane.yaml --battery ship_battery
                  The smallest capacity that meets every requirement in every case, and the smallest on offer.
              endurance size floatplane.yaml --battery ship_battery --find health
                  When to replace it.
              endurance size floatplane.yaml --find load --bus essential_bus
                  How many amperes more that bus can carry.
              endurance size floatplane.yaml --find delay --out out/floatplane
                  How late the pilot may act, and a plot in a folder.

            Exit codes:
              0  the scenario as it stands meets its requirements
              1  it does not, or nothing that was tried does
              2  the scenario, the command line or the folder is wrong
            """,
        "failures" => """
            Examples:
              endurance failures floatplane.yaml
                  What every single failure takes, and which failures nothing would show.
              endurance failures floatplane.yaml --case engine_out --out out/floatplane
                  The matrix of that case, and a picture of every case in a folder.
              endurance failures floatplane.yaml --pairs --format csv > pairs.csv
                  Every two failures at once, for a spreadsheet.

            Exit codes:
              0  no failure loses a requirement
              1  some failure does
              2  the scenario, the command line or the folder is wrong
            """,
        "spread" => """
            Examples:
              endurance spread floatplane.yaml --samples 10000 --seed 1
                  P5, P50 and P95 of the minutes, and how likely each requirement is met.
              endurance spread floatplane.yaml --sensitivity --out out/floatplane
                  Also which tolerance matters most, and the pictures in a folder.

            The scenario says under tolerances how far each quantity may be off.

            Exit codes:
              0  every sample meets every requirement
              1  some sample does not
              2  the scenario, the command line or the folder is wrong
            """,
        "sweep" => """
            Examples:
              endurance sweep floatplane.yaml --vary ship_battery.health --from "100 %" --to "60 %" --steps 9
                  Minutes of every case as the battery ages.
              endurance sweep floatplane.yaml --vary com_receive.current --from "0.5 A" --to "1 A" --out out/floatplane
                  The same for a load, and a plot in a folder.

            Exit codes:
              0  every value meets every requirement
              1  some value does not
              2  the scenario, the command line or the folder is wrong
            """,
        "parts" => """
            Examples:
              endurance parts
                  Battery chemistries, wires and diodes: what a scenario may leave out, and where it comes from.
              endurance parts --format markdown > parts.md
                  The same for a build log.
            """,
        "new" => """
            Examples:
              endurance new mine.yaml
                  A small commented aircraft to change into your own.
              endurance new mine.yaml --force
                  The same, in place of a file that is already there.
            """,
        "completion" => """
            Examples:
              endurance completion bash > ~/.local/share/bash-completion/completions/endurance
                  For bash; it takes effect in the next shell.
              endurance completion zsh > ~/.zfunc/_endurance
                  For zsh, where ~/.zfunc stands in fpath.
              endurance completion fish > ~/.config/fish/completions/endurance.fish
                  For fish.
              endurance completion powershell >> $PROFILE
                  For PowerShell.
            """,
        "schema" => """
            Examples:
              endurance schema > endurance.schema.json
                  Then the line "# yaml-language-server: $schema=endurance.schema.json" at the top of a
                  scenario lets an editor complete its keys, show what they mean, and mark mistakes.
            """,
        "explain" => """
            Examples:
              endurance explain warning-behind-diode
                  What a finding means, why it matters, what to do.
              endurance explain ideality
                  A key of the scenario; column heads of the report work too.
              endurance explain
                  All words there are.

            Exit codes:
              0  the word is explained
              2  it is not known; the nearest one is shown
            """,
        "fit" => """
            Examples:
              endurance fit bench.csv --rated "17 Ah at 20 h" --to "10.5 V"
                  Capacity, health, resistance, EMF table, and whether the capacity test passes.
              endurance fit bench.csv --run 1 --run 4
                  Fit on two discharges and see how well they predict the others.
              endurance fit bench.csv --out out/bench
                  The same, and battery.yaml, fit.json and a plot in a folder.

            The log has a line of headings with time (time_s, time_min, time_h, or timestamps), voltage,
            current (either sign) and, if known, temperature. Commas, semicolons or tabs separate; cells
            may be empty; several discharges may stand in one file.

            Exit codes:
              0  every capacity test passes, or no rating was given
              1  a capacity test fails
              2  the log, the command line or the folder is wrong
              3  the program itself failed
            """,
        _ => """
            Examples:
              endurance new mine.yaml
                  Write a commented starter scenario, then change it into your aircraft.
              endurance check mine.yaml
                  Find every mistake in it, each with line and column.
              endurance run mine.yaml
                  Minutes for each failure case: what is lost first, and when.
              endurance run mine.yaml --out out/mine
                  The same, and plots (PNG, SVG), traces (CSV) and results.json in a folder.
              endurance run mine.yaml --case engine_out --format json
                  One case, for another program.

            Exit codes:
              0    every requirement is met, or there is none
              1    some requirement is not met
              2    the scenario, the command line or the folder is wrong
              3    the program itself failed
              130  interrupted

            The answer is a calculation from your own numbers. Prove it on the ground before you rely on it.
            """,
    };
}
