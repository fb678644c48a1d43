using System.Security.Cryptography;
using System.Text;
using Endurance.Cli.Output;

namespace Endurance.Cli.Tests;

public sealed class OutputFolderTests : IDisposable
{
    private readonly TemporaryFolder _parent = new();

    private static string Line(string name, string content) => $"{name}\t{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content)))}\n";

    private string Folder => _parent["out"];

    public void Dispose() => _parent.Dispose();

    [Fact]
    public void Folder_New_HoldsTheFilesAndTheirList()
    {
        Write(force: false, File("b.csv", "2"), File("a.csv", "1"));

        Assert.Equal([".endurance-files", "a.csv", "b.csv"], TemporaryFolder.Names(Folder));
        Assert.Equal(Line("a.csv", "1") + Line("b.csv", "2"), Content(".endurance-files"));
        Assert.Equal("1", Content("a.csv"));
    }

    [Fact]
    public void SecondRun_SameFolder_ReplacesItsOwnFilesAndNothingElse()
    {
        Write(force: false, File("a.csv", "old"), File("gone.csv", "old"));
        System.IO.File.WriteAllText(Path.Combine(Folder, "notes.txt"), "mine");

        Write(force: false, File("a.csv", "new"), File("b.csv", "new"));

        Assert.Equal([".endurance-files", "a.csv", "b.csv", "notes.txt"], TemporaryFolder.Names(Folder));
        Assert.Equal("new", Content("a.csv"));
        Assert.Equal("mine", Content("notes.txt"));
        Assert.Equal(Line("a.csv", "new") + Line("b.csv", "new"), Content(".endurance-files"));
    }

    [Fact]
    public void OwnFile_ChangedByTheUser_IsRefusedAndNothingIsWritten()
    {
        Write(force: false, File("card.csv", "empty"), File("a.csv", "old"));
        System.IO.File.WriteAllText(Path.Combine(Folder, "card.csv"), "filled in");

        var fault = Assert.Throws<OutputException>(() => Write(force: false, File("card.csv", "empty"), File("a.csv", "new")));

        Assert.Equal($"{Path.Combine(Folder, "card.csv")} was changed after this program wrote it; choose another folder, or replace it with --force", fault.Message);
        Assert.Equal("filled in", Content("card.csv"));
        Assert.Equal("old", Content("a.csv"));
    }

    [Fact]
    public void StaleFile_ChangedByTheUser_IsKept()
    {
        Write(force: false, File("card.csv", "empty"), File("gone.csv", "old"));
        System.IO.File.WriteAllText(Path.Combine(Folder, "card.csv"), "filled in");

        Write(force: false, File("a.csv", "new"));

        Assert.Equal([".endurance-files", "a.csv", "card.csv"], TemporaryFolder.Names(Folder));
        Assert.Equal("filled in", Content("card.csv"));
    }

    [Fact]
    public void Run_KilledWhileMoving_LeavesNothingThatTheNextTakesForForeign()
    {
        Directory.CreateDirectory(Folder);
        System.IO.File.WriteAllText(Path.Combine(Folder, ".endurance-files"), Line("a.csv", "new") + Line("a.csv", "old") + Line("b.csv", "new") + Line("b.csv", "old"));
        System.IO.File.WriteAllText(Path.Combine(Folder, "a.csv"), "new");
        System.IO.File.WriteAllText(Path.Combine(Folder, "b.csv"), "old");
        System.IO.File.WriteAllText(Path.Combine(Folder, ".b.csv.endurance-partial"), "new");
        System.IO.File.WriteAllText(Path.Combine(Folder, ".endurance-lock"), "");

        Write(force: false, File("a.csv", "newer"), File("b.csv", "newer"));

        Assert.Equal([".endurance-files", "a.csv", "b.csv"], TemporaryFolder.Names(Folder));
        Assert.Equal("newer", Content("b.csv"));
    }

    [Fact]
    public void Run_KilledWhileWriting_LeavesNothingThatTheNextDoesNotClear()
    {
        Write(force: false, File("a.csv", "old"));
        System.IO.File.WriteAllText(Path.Combine(Folder, ".picture.png.endurance-partial"), "half");
        System.IO.File.WriteAllText(Path.Combine(Folder, "notes.endurance-partial"), "mine");

        Write(force: false, File("a.csv", "new"));

        Assert.Equal([".endurance-files", "a.csv", "notes.endurance-partial"], TemporaryFolder.Names(Folder));
        Assert.Equal("new", Content("a.csv"));
    }

    [Fact]
    public void List_WithoutDigests_StandsForAnyContent()
    {
        Directory.CreateDirectory(Folder);
        System.IO.File.WriteAllText(Path.Combine(Folder, ".endurance-files"), "a.csv\n");
        System.IO.File.WriteAllText(Path.Combine(Folder, "a.csv"), "old");

        Write(force: false, File("a.csv", "new"));

        Assert.Equal("new", Content("a.csv"));
    }

    [Fact]
    public void Run_WhileAnotherWrites_IsRefusedAndTheOtherIsWhole()
    {
        OutputException? second = null;
        var first = new OutputFile("a.csv", stream =>
        {
            second = Assert.Throws<OutputException>(() => Write(force: true, File("a.csv", "second")));
            stream.Write("first"u8);
        });

        Write(force: false, first);

        Assert.Equal($"another run is writing to {Folder}; wait for it, or choose another folder", second!.Message);
        Assert.Equal([".endurance-files", "a.csv"], TemporaryFolder.Names(Folder));
        Assert.Equal("first", Content("a.csv"));
    }

    [Fact]
    public void ForeignFile_WithoutForce_IsRefusedAndNothingIsWritten()
    {
        Directory.CreateDirectory(Folder);
        System.IO.File.WriteAllText(Path.Combine(Folder, "b.csv"), "mine");

        var fault = Assert.Throws<OutputException>(() => Write(force: false, File("a.csv", "1"), File("b.csv", "2")));

        Assert.Contains("b.csv was not written by this program", fault.Message, StringComparison.Ordinal);
        Assert.Equal(["b.csv"], TemporaryFolder.Names(Folder));
        Assert.Equal("mine", Content("b.csv"));
    }

    [Fact]
    public void ForeignFile_WithForce_IsReplaced()
    {
        Directory.CreateDirectory(Folder);
        System.IO.File.WriteAllText(Path.Combine(Folder, "b.csv"), "mine");

        Write(force: true, File("b.csv", "2"));

        Assert.Equal("2", Content("b.csv"));
    }

    [Fact]
    public void FolderInTheWayOfAFile_EvenWithForce_IsRefusedAndStays()
    {
        Directory.CreateDirectory(Path.Combine(Folder, "a.csv"));

        Assert.Throws<OutputException>(() => Write(force: true, File("a.csv", "1")));

        Assert.True(Directory.Exists(Path.Combine(Folder, "a.csv")));
    }

    [Theory]
    [InlineData("../victim.txt")]
    [InlineData("..")]
    [InlineData("sub/victim.txt")]
    [InlineData("sub\\victim.txt")]
    [InlineData("/etc/hostname")]
    [InlineData("C:victim.txt")]
    [InlineData(".endurance-files")]
    public void List_TamperedWith_IsRefusedAndNothingIsDeleted(string name)
    {
        var victim = _parent.Write("victim.txt", "precious");
        Write(force: false, File("a.csv", "1"));
        System.IO.File.AppendAllText(Path.Combine(Folder, ".endurance-files"), name + "\n");

        var fault = Assert.Throws<OutputException>(() => Write(force: true, File("b.csv", "2")));

        Assert.Contains("which is no file of this folder", fault.Message, StringComparison.Ordinal);
        Assert.Equal("precious", System.IO.File.ReadAllText(victim));
        Assert.Equal([".endurance-files", "a.csv"], TemporaryFolder.Names(Folder));
    }

    [UnixFact]
    public void LinkInPlaceOfAFile_Replaced_LeavesItsTargetAlone()
    {
        var victim = _parent.Write("victim.txt", "precious");
        Write(force: false, File("a.csv", "1"));
        System.IO.File.Delete(Path.Combine(Folder, "a.csv"));
        System.IO.File.CreateSymbolicLink(Path.Combine(Folder, "a.csv"), victim);
        System.IO.File.CreateSymbolicLink(Path.Combine(Folder, ".a.csv.endurance-partial"), victim);

        Assert.Throws<OutputException>(() => Write(force: false, File("a.csv", "2")));
        Write(force: true, File("a.csv", "2"));

        Assert.Equal("precious", System.IO.File.ReadAllText(victim));
        Assert.Equal("2", Content("a.csv"));
    }

    [Fact]
    public void Disk_FullHalfWay_LeavesTheEarlierRunUntouched()
    {
        Write(force: false, File("a.csv", "old"));

        var fault = Assert.Throws<OutputException>(
            () => Write(force: false, File("a.csv", "new"), new OutputFile("b.csv", _ => throw new IOException("No space left on device"))));

        Assert.Equal($"cannot write to {Folder}: No space left on device", fault.Message);
        Assert.Equal([".endurance-files", "a.csv"], TemporaryFolder.Names(Folder));
        Assert.Equal("old", Content("a.csv"));
    }

    [Fact]
    public void Disk_FullInANewFolder_LeavesNoFolder()
    {
        var deep = Path.Combine(Folder, "deep");

        Assert.Throws<OutputException>(
            () => OutputFolder.Write(deep, [new OutputFile("a.csv", _ => throw new IOException("full"))], force: false, CancellationToken.None));

        Assert.False(Path.Exists(Folder));
    }

    [Fact]
    public void Run_InterruptedHalfWay_LeavesTheEarlierRunUntouched()
    {
        using var interruption = new CancellationTokenSource();
        Write(force: false, File("a.csv", "old"));
        OutputFile[] files = [new("a.csv", _ => interruption.Cancel()), File("b.csv", "new")];

        Assert.Throws<OperationCanceledException>(() => OutputFolder.Write(Folder, files, force: false, interruption.Token));

        Assert.Equal([".endurance-files", "a.csv"], TemporaryFolder.Names(Folder));
        Assert.Equal("old", Content("a.csv"));
    }

    [Fact]
    public void Folder_IsAFile_IsRefused()
    {
        var file = _parent.Write("out", "mine");

        var fault = Assert.Throws<OutputException>(() => Write(force: true, File("a.csv", "1")));

        Assert.Equal($"{file} is a file; --out needs a folder", fault.Message);
        Assert.Equal("mine", System.IO.File.ReadAllText(file));
    }

    [Fact]
    public void Folder_BehindAFile_IsRefused()
    {
        _parent.Write("out", "mine");

        var fault = Assert.Throws<OutputException>(
            () => OutputFolder.Write(Path.Combine(Folder, "deeper"), [File("a.csv", "1")], force: false, CancellationToken.None));

        Assert.StartsWith($"cannot write to {Path.Combine(Folder, "deeper")}: ", fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', fault.Message);
    }

    private static OutputFile File(string name, string content) => new(name, stream => stream.Write(Encoding.UTF8.GetBytes(content)));

    private string Content(string name) => System.IO.File.ReadAllText(Path.Combine(Folder, name));

    private void Write(bool force, params OutputFile[] files) => OutputFolder.Write(Folder, files, force, CancellationToken.None);
}
