// System.Range would otherwise be found first.
global using Range = Runnel.Engine.Numerics.Range;

using System.Runtime.CompilerServices;

namespace Runnel.Engine.Numerics;

/// <summary>The check at the door of a formula: a value outside the range for which the rule holds is refused. Found without a using, by the alias above.</summary>
internal static class Range
{
    /// <summary>The value, if it is a finite number from <paramref name="min"/> to <paramref name="max"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, infinite or not a number.</exception>
    public static double Within(double value, double min, double max, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"must be a number from {min} to {max}");
}
