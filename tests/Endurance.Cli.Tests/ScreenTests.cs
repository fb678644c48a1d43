namespace Endurance.Cli.Tests;

public sealed class ScreenTests
{
    [Theory]
    [InlineData(true, true)]
    [InlineData(true, true, "TERM=xterm-256color")]
    [InlineData(true, true, "NO_COLOR=")]
    [InlineData(true, false, "NO_COLOR=1")]
    [InlineData(true, false, "NO_COLOR=0")]
    [InlineData(true, false, "TERM=dumb")]
    [InlineData(false, false)]
    [InlineData(false, false, "TERM=xterm-256color")]
    public void Colour_IsUsedOnTerminalsThatWantIt(bool isTerminal, bool expected, params string[] variables) =>
        Assert.Equal(expected, Of(variables, isTerminal).HasColour);

    [Theory]
    [InlineData(true, true)]
    [InlineData(true, true, "NO_COLOR=1")]
    [InlineData(true, false, "TERM=dumb")]
    [InlineData(false, false)]
    public void Progress_ShowsOnTerminalsThatCanGoBack(bool isTerminal, bool expected, params string[] variables) =>
        Assert.Equal(expected, Of(variables, isTerminal).ShowsProgress);

    [Theory]
    [InlineData(90, true)]
    [InlineData(120, false)]
    [InlineData(60, true, "COLUMNS=60")]
    [InlineData(60, false, "COLUMNS=60")]
    [InlineData(40, true, "COLUMNS=8")]
    [InlineData(90, true, "COLUMNS=0")]
    [InlineData(90, true, "COLUMNS=-7")]
    [InlineData(90, true, "COLUMNS=wide")]
    [InlineData(90, true, "COLUMNS=99999999999")]
    public void Width_IsThatStatedElseThatOfTheWindow(int expected, bool isTerminal, params string[] variables) =>
        Assert.Equal(expected, Of(variables, isTerminal).Width);

    [Theory]
    [InlineData(false)]
    [InlineData(false, "LANG=C.UTF-8")]
    [InlineData(false, "LANG=de_DE.utf8")]
    [InlineData(true, "LANG=C")]
    [InlineData(true, "LANG=C.UTF-8", "LC_ALL=POSIX")]
    [InlineData(true, "LANG=C.UTF-8", "LC_CTYPE=de_DE@euro")]
    [InlineData(false, "LANG=C", "LC_CTYPE=C.UTF-8")]
    public void Ascii_IsKeptToWhereTheLocaleHasNoUtf8(bool expected, params string[] variables)
    {
        if (OperatingSystem.IsWindows())
            return;

        Assert.Equal(expected, Of(variables, isTerminal: true).IsAscii);
    }

    private static Screen Of(string[] variables, bool isTerminal)
    {
        var values = variables.Select(variable => variable.Split('=')).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);
        return Screen.Of(values.GetValueOrDefault, isTerminal, isTerminal, isTerminal ? 90 : null);
    }
}
