using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using Endurance.Yaml.Units;

namespace Endurance.Yaml.Binding;

/// <summary>Binds what opens and closes in a feed or load on command: contactor and switch.</summary>
internal static class ContactBinder
{
    public static Contactor? Contactor(string feed, MappingReader owner)
    {
        if (!owner.Has("contactor"))
            return null;
        if (owner.Find("contactor") is ScalarNode { IsNull: false })
        {
            owner.Reading.Assume(feed, "contactor without coil current or contact resistance");
            return new Contactor { IsClosed = owner.Either("contactor", "closed", "open") ?? true };
        }

        if (owner.Mapping("contactor", FeedKeys.Contactor) is not { } reader)
            return null;
        AssumeState(feed, reader, "contactor");
        AssumeContact(feed, reader, "contactor");
        if (!reader.Has("coil"))
            owner.Reading.Assume(feed, "contactor without coil current");
        CheckCoil(reader);
        return new Contactor
        {
            IsClosed = reader.Either("state", "closed", "open") ?? true,
            Coil = Coil(reader),
            CoilBus = reader.Text("coil_bus"),
            ContactResistance = reader.Resistance("contact") ?? default,
            PullInCurrent = reader.Quantity("pull_in") is { } amperes ? Current.FromAmperes(amperes) : null,
            PullsInAbove = reader.Voltage("pulls_in_above"),
            DropsOutBelow = reader.Voltage("drops_out_below"),
            IsNormallyClosed = reader.Either("contacts", "normally_closed", "normally_open") ?? false,
        };
    }

    public static Switch? Switch(string feed, MappingReader owner)
    {
        if (!owner.Has("switch"))
            return null;
        if (owner.Find("switch") is ScalarNode { IsNull: false })
        {
            owner.Reading.Assume(feed, "switch contact resistance 0");
            return new Switch { IsClosed = owner.Either("switch", "closed", "open") ?? true };
        }

        if (owner.Mapping("switch", FeedKeys.Switch) is not { } reader)
            return null;
        AssumeState(feed, reader, "switch");
        AssumeContact(feed, reader, "switch");
        return new Switch { IsClosed = reader.Either("state", "closed", "open") ?? true, ContactResistance = reader.Resistance("contact") ?? default };
    }

    private static void CheckCoil(MappingReader reader)
    {
        if (reader.Has("coil_bus") && !reader.Has("coil") && !reader.Has("pulls_in_above"))
            reader.Error("conflicting-keys", "coil_bus", $"{reader.Owner} has a `coil_bus` but no `coil`", "coil: " + reader.Known("coil").Form);
        if (reader.Has("pull_in") && !reader.Has("coil"))
            reader.Error("conflicting-keys", "pull_in", $"{reader.Owner} has a `pull_in` but no `coil`", "coil: " + reader.Known("coil").Form);
        if (reader.Has("drops_out_below") && !reader.Has("pulls_in_above"))
            reader.Error("conflicting-keys", "drops_out_below", $"{reader.Owner} has a `drops_out_below` but no `pulls_in_above`", "pulls_in_above: " + reader.Known("pulls_in_above").Form);
    }

    private static Demand? Coil(MappingReader reader)
    {
        if (reader.Text("coil") is not { } text)
            return null;
        var asResistance = QuantityReader.Read(text, FeedKeys.CoilResistance);
        if (asResistance.Value is { } ohms)
            return new ConstantResistance(Resistance.FromOhms(ohms));
        var asCurrent = QuantityReader.Read(text, FeedKeys.CoilCurrent);
        if (asCurrent.Value is { } amperes)
            return new ConstantCurrent(Current.FromAmperes(amperes));
        var fault = asResistance.Fault!.Code is "out-of-range" ? asResistance.Fault : asCurrent.Fault!;
        reader.Error(fault.Code, "coil", fault.Message.Replace("not a current", "neither a current nor a resistance", StringComparison.Ordinal), fault.Code is "out-of-range" or "decimal-comma" ? fault.Expected : reader.Known("coil").Form, fault.Nearest);
        return null;
    }

    private static void AssumeState(string feed, MappingReader reader, string part)
    {
        if (!reader.Has("state"))
            reader.Reading.Assume(feed, $"{part} closed at time zero");
    }

    private static void AssumeContact(string feed, MappingReader reader, string part)
    {
        if (!reader.Has("contact"))
            reader.Reading.Assume(feed, $"{part} contact resistance 0");
    }
}
