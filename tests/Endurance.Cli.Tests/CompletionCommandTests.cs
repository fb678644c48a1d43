using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Endurance.Cli.Tests;

public sealed partial class CompletionCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Shells => ["bash", "zsh", "fish", "powershell"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Shells))]
    public void Script_OfEveryShell_NamesEveryCommandAndOptionOfTheHelp(string shell)
    {
        var script = ProgramRun.InProcess("completion", shell);
        var commands = Commands().Matches(ProgramRun.InProcess("--help").Output).Select(match => match.Groups["name"].Value).ToArray();

        Assert.True(commands.Length >= 18, string.Join(' ', commands));
        foreach (var command in commands)
        {
            Assert.Matches($"\\b{command}\\b", script.Output);
            var options = Options().Matches(ProgramRun.InProcess(command, "--help").Output).Select(match => match.Groups["name"].Value);
            Assert.All(options, option => Assert.Contains(shell is "fish" ? $"-l {option[2..]}" : option, script.Output, StringComparison.Ordinal));
        }

        Assert.Equal(0, script.ExitCode);
    }

    [Fact]
    public void Shell_Unknown_IsRefused()
    {
        var run = ProgramRun.InProcess("completion", "tcsh");

        Assert.StartsWith("endurance: SHELL: 'tcsh' is not known; expected bash, zsh, fish or powershell.", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [ShellTheory("bash")]
    [InlineData("run", "ru")]
    [InlineData("--format --force", "run", "--fo")]
    [InlineData("table json csv markdown", "run", "--format", "")]
    [InlineData("json", "run", "--format", "=", "j")]
    [InlineData("105 150 200", "wiring", "mine.yaml", "--insulation", "")]
    [InlineData("mine.yaml", "check", "mi")]
    [InlineData("a folder", "run", "mine.yaml", "--out", "")]
    [InlineData("", "run", "--case", "")]
    [InlineData("--version", "--v")]
    [InlineData("droop", "explain", "droo")]
    [InlineData("bash zsh fish powershell", "completion", "")]
    public void Bash_Asked_Completes(string expected, params string[] words)
    {
        _folder.Write("mine.yaml", "");
        Directory.CreateDirectory(_folder["a folder"]);
        var script = _folder.Write("script.txt", ProgramRun.InProcess("completion", "bash").Output);
        const string Ask = "cd \"$1\" && source \"$2\" && shift 2 && COMP_WORDS=(endurance \"$@\") && COMP_CWORD=$# && { _endurance; echo \"${COMPREPLY[*]}\"; }";

        Assert.Equal(expected + "\n", Shell("bash", ["-c", Ask, "bash", _folder.Path, script, .. words]));
    }

    [ShellTheory("bash")]
    [InlineData("bash")]
    public void Bash_Script_Parses(string shell) => AssertParses(shell);

    [ShellTheory("zsh")]
    [InlineData("zsh")]
    public void Zsh_Script_Parses(string shell) => AssertParses(shell);

    [ShellTheory("fish")]
    [InlineData("fish")]
    public void Fish_Script_Parses(string shell) => AssertParses(shell);

    [ShellTheory("fish")]
    [InlineData("endurance run --format j", "json")]
    [InlineData("endurance compl", "completion")]
    public void Fish_Asked_Completes(string line, string expected)
    {
        var script = _folder.Write("script.txt", ProgramRun.InProcess("completion", "fish").Output);

        Assert.StartsWith(expected, Shell("fish", "--no-config", "-c", $"source '{script}'; complete -C '{line}'"), StringComparison.Ordinal);
    }

    [ShellTheory("pwsh")]
    [InlineData("endurance run --o", "--overlay --out")]
    [InlineData("endurance run --format ", "table json csv markdown")]
    [InlineData("endurance run --format json --quiet --fo", "--format --force")]
    [InlineData("endurance completion p", "powershell")]
    [InlineData("endurance check mi", "./mine.yaml")]
    public void PowerShell_Asked_Completes(string line, string expected)
    {
        _folder.Write("mine.yaml", "");
        var script = _folder.Write("script.txt", ProgramRun.InProcess("completion", "powershell").Output);
        var ask = $"Invoke-Expression (Get-Content -Raw '{script}'); "
            + $"([System.Management.Automation.CommandCompletion]::CompleteInput('{line}', {line.Length}, $null).CompletionMatches | ForEach-Object CompletionText | ForEach-Object {{ $_.Trim([char]39) }}) -join ' '";

        Assert.Equal(expected, Shell("pwsh", "-NoProfile", "-NonInteractive", "-Command", ask).Trim());
    }

    private void AssertParses(string shell) =>
        Assert.Equal("", Shell(shell, "-n", _folder.Write("script.txt", ProgramRun.InProcess("completion", shell).Output)));

    /// <summary>Both streams together, so that a complaint is never missed.</summary>
    private string Shell(string name, params ReadOnlySpan<string> arguments)
    {
        var start = new ProcessStartInfo(name, arguments.ToArray()) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = _folder.Path };
        start.Environment["HOME"] = _folder.Path;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output + error.GetAwaiter().GetResult();
    }

    [GeneratedRegex("^  (?<name>[a-z]+) ( |<|\\[)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Commands();

    [GeneratedRegex("^  .*?(?<name>--[a-z-]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Options();
}
