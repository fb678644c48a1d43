using System.Text;
using Endurance.Cli.Watching;

namespace Endurance.Cli.Tests.Watching;

public sealed class SettledFileTests
{
    private static readonly FileLook Missing = new(null, "there is no such file");
    private static readonly FileLook Old = Holding("old");

    [Fact]
    public void File_ThatStays_IsNoNews() => Assert.Empty(News(Old, Old, Old, Old, Old, Old, Old, Old));

    [Fact]
    public void Contents_SeenTwice_AreNewsOnce() => Assert.Equal([2], News(Old, Holding("new"), Holding("new"), Holding("new"), Holding("new")));

    [Fact]
    public void Contents_CaughtHalfWritten_AreNotShown() => Assert.Equal([3], News(Old, Holding("ne"), Holding("new"), Holding("new")));

    [Fact]
    public void File_EmptiedAndThenWritten_IsNewsWhenWritten() =>
        Assert.Equal([5], News(Holding(""), Holding(""), Holding(""), Old, Holding("new"), Holding("new")));

    [Fact]
    public void File_RenamedAwayForAMoment_IsNoNews() => Assert.Empty(News(Missing, Missing, Missing, Old, Old, Old));

    [Fact]
    public void File_Deleted_IsNewsAndSoIsItsReturn() =>
        Assert.Equal([5, 7], News(Missing, Missing, Missing, Missing, Missing, Missing, Old, Old));

    [Fact]
    public void Contents_ChangedBackWithinOneLook_AreNoNews() => Assert.Empty(News(Holding("new"), Old, Old, Old));

    private static FileLook Holding(string text) => new(Encoding.UTF8.GetBytes(text), "");

    /// <summary>The looks, counted from 0, that told something.</summary>
    private static int[] News(params FileLook[] looks)
    {
        var file = new SettledFile(Old.Version);
        return [.. looks.Index().Where(look => (file = file.After(look.Item)).IsNews).Select(look => look.Index)];
    }
}
