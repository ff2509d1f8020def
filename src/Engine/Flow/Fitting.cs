using Runnel.Engine.Quantities;

namespace Runnel.Engine.Flow;

/// <summary>Things in a pipe that cost head.</summary>
public enum Fitting
{
    /// <summary>A right-angled elbow.</summary>
    Elbow,

    /// <summary>Half an elbow.</summary>
    Elbow45,

    /// <summary>A tee, water going straight on.</summary>
    TeeRun,

    /// <summary>A tee, water turning into or out of the branch.</summary>
    TeeBranch,

    /// <summary>An open valve of full bore: ball or gate.</summary>
    Valve,

    /// <summary>A union or coupling.</summary>
    Union,

    /// <summary>From a tank into a connector whose end stands inside.</summary>
    TankConnector,

    /// <summary>From a tank into a pipe flush with its wall, sharp edged.</summary>
    FlushEntrance,

    /// <summary>Out of a pipe, freely or under water.</summary>
    Exit,

    /// <summary>A swing check valve, open.</summary>
    CheckValve,
}

/// <summary>Loss coefficients K of fittings, with the span of the sources.</summary>
public static class FittingLoss
{
    private const string Epanet = "EPANET 2.2 User Manual (2020), table 3.3";
    private const string Crane = "Crane TP-410 friction factor of 1 in pipe, times its equivalent length (as quoted by C. Bell, fluids; some multipliers from memory)";

    /// <summary>Loss coefficient of a fitting, on the velocity head in its own bore.</summary>
    /// <param name="fitting">The fitting.</param>
    /// <returns>K: the likely value is the most cautious of the usual tables; low and high are where sources disagree.</returns>
    public static Estimate Of(Fitting fitting) => fitting switch
    {
        // Hooper, Chemical Engineering 1981, screwed elbow: 800/Re + 0.40 (1 + 1/D): 0.94 in 1 in pipe at Re 5000.
        Fitting.Elbow => K("Elbow", 0.66, 0.9, 0.94, $"{Epanet} 0.9; IRC 2018 table A.2.2 0.90; low: {Crane}; high: Hooper's two-K rule at Re 5000"),
        Fitting.Elbow45 => K("Elbow of 45 degrees", 0.4, 0.42, 0.42, $"{Epanet} 0.4; IRC 2018 table A.2.2 0.42"),
        Fitting.TeeRun => K("Tee, straight on", 0.44, 0.6, 0.6, $"{Epanet}; low: {Crane}"),
        Fitting.TeeBranch => K("Tee, into the branch", 1.32, 1.8, 1.8, $"{Epanet} 1.8; IRC 2018 table A.2.2 1.80; low: {Crane}"),
        Fitting.Valve => K("Open valve", 0.07, 0.2, 0.32, $"{Epanet}, gate 0.2; low: ball of full bore, {Crane}; high: reduced ball, Hooper's two-K rule"),
        Fitting.Union => K("Union", 0.04, 0.08, 0.2, "from memory: handbook tables of threaded unions, 0.08; span is a guess", OriginKind.Default),
        Fitting.TankConnector => K("Tank connector", 0.5, 0.78, 0.78,
            "common practice, no source for this fitting: taken as a pipe that projects into the tank, 0.78 (Crane TP-410 via fluids), or flush, 0.5",
            OriginKind.Default),
        Fitting.FlushEntrance => K("Flush entrance", 0.5, 0.5, 0.57, $"{Epanet} 0.5; high: Rennels via fluids 0.57"),
        Fitting.Exit => K("Exit", 1, 1, 1, $"{Epanet}; the velocity head itself"),
        Fitting.CheckValve => K("Check valve", 1.5, 2.5, 2.5, $"{Epanet}, swing check; low: Hooper's two-K constant. Spring-loaded ones lose more: see their maker"),
        _ => throw new ArgumentOutOfRangeException(nameof(fitting), fitting, "no such fitting"),
    };

    private static Estimate K(string label, double low, double likely, double high, string source, OriginKind kind = OriginKind.Catalogue) =>
        new(low, likely, high, Units.One, new($"catalogue:fittings/{label}", $"Loss coefficient, {label.ToLowerInvariant()}", kind, source));
}
