using Endurance.Yaml.Units;

namespace Endurance.Yaml.Keys;

/// <summary>Shapes that several keys have.</summary>
internal static class Shapes
{
    public static readonly ValueShape Text = new AnyText();

    /// <summary>One name, or a list of names.</summary>
    public static readonly ValueShape Names = new AnyOf([Text, new ListOf(Text, Least: 0)]);

    public static readonly ValueShape ClosedOrOpen = Word("closed", "open");

    public static readonly ValueShape Gauge = new Patterned("^(00?0?0?|[1-4]/0|[1-9]|[1-3][0-9]|40) *AWG$");

    public static readonly ValueShape Date = new Patterned("^[0-9]{4}-[0-9]{2}-[0-9]{2}$");

    public static ValueShape Word(params string[] words) => new OneWord([.. words]);

    public static ValueShape Keys(Func<Section> section) => new Keyed(section);

    /// <summary>A value alone, or keys that say more.</summary>
    public static ValueShape Or(this ValueShape value, Func<Section> section) => new AnyOf([value, new Keyed(section)]);

    /// <summary>Pairs such as <c>[[0 %, 11.0 V], [100 %, 12.85 V]]</c>.</summary>
    public static ValueShape Pairs(QuantityRange x, QuantityRange y, int least) => new ListOf(new Row([new Measured(x), new Measured(y)]), least);

    public static ValueShape ListOfKeys(Func<Section> section, int least = 1, int? most = null) => new ListOf(new Keyed(section), least, most);

    /// <summary>Parts by name, of which each and the whole may be left empty.</summary>
    public static ValueShape Parts(Func<Section> section) => OrNothing(new ByName(OrNothing(new Keyed(section))));

    public static ValueShape OrNothing(ValueShape shape) => new AnyOf([shape, new Nothing()]);
}
