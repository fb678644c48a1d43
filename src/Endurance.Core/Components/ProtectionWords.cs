namespace Endurance.Components;

/// <summary>What the trade calls each kind of protection, as events and findings write it.</summary>
internal static class ProtectionWords
{
    public static string Of(ProtectionKind kind) => kind switch
    {
        ProtectionKind.Breaker => "breaker",
        ProtectionKind.Fuse => "fuse",
        _ => "fusible link",
    };
}
