using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class SchemaCommandTests
{
    [Fact]
    public void Schema_Printed_ExplainsTheKeys()
    {
        var run = ProgramRun.InProcess("schema");

        var bus = JsonDocument.Parse(run.Output).RootElement.GetProperty("$defs").GetProperty("bus");
        Assert.Equal(
            "The voltage below which a bus counts as lost. Take the highest minimum of what hangs on it. Expected: a voltage in mV or V, such as 11.0 V.",
            bus.GetProperty("properties").GetProperty("cutoff").GetProperty("description").GetString());
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }
}
