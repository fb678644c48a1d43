using Endurance.Components;

namespace Endurance.Simulation;

/// <summary>A pack's own electronics as numbers; a limit that is not there is infinite and never reached.</summary>
/// <param name="OpensBelow">Volts.</param>
/// <param name="OpensAbove">Amperes.</param>
/// <param name="RecloseAbove">Volts.</param>
/// <param name="BlocksCharge">The battery is too cold to be charged.</param>
internal readonly record struct CompiledProtection(double OpensBelow, double OpensAbove, double RecloseAbove, bool BlocksCharge)
{
    public static CompiledProtection Of(Battery battery) => battery.Protection is { } protection
        ? new(
            protection.OpensBelow?.Volts ?? double.NegativeInfinity,
            protection.OpensAbove?.Amperes ?? double.PositiveInfinity,
            protection.RecloseAbove?.Volts ?? double.PositiveInfinity,
            protection.NoChargeBelow is { } coldest && battery.Temperature < coldest)
        : new(double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity, false);
}
