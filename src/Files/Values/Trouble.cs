namespace Runnel.Files.Values;

/// <summary>Why a value could not be read, and what would be right.</summary>
public sealed record Trouble(string Problem, string Mend = "");

/// <summary>What a value's reading needs to know of its plan.</summary>
/// <param name="Currency">Code of the plan's currency.</param>
/// <param name="BareTemperatures">True if a temperature may be written without °C or °F: in a plan in metric units.</param>
/// <param name="Exchange">What one unit of another currency costs in the plan's.</param>
public sealed record ValueContext(string Currency, bool BareTemperatures = true, IReadOnlyDictionary<string, double>? Exchange = null)
{
    /// <summary>True if money keeps the currency that it was written in (prices, which the bill converts where a reader can see it).</summary>
    public bool KeepsCurrency { get; init; }
}
