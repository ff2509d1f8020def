namespace Runnel.Engine.Light;

/// <summary>What "equal to 60 W" on a bulb means: so many lumens, never so many watts.</summary>
public static class EquivalentWatts
{
    /// <summary>What a grower should know before reckoning with such a number.</summary>
    public const string Caution =
        "The watts that a bulb stands for are a promise of lumens, as of an old filament bulb; it draws far fewer. Reckon the bill with the "
        + "watts it draws and the plants' light with its lumens; the number with the word \"equivalent\" serves neither.";

    /// <summary>Least lumens for each claim.</summary>
    /// <remarks>Source: ENERGY STAR, light output of bulbs beside old incandescent ones (40, 60, 75, 100 and 150 W). Elsewhere a little
    /// different: the European Union's regulation 244/2009 has 806 lm for 60 W (from memory). Not for: reflector and spot bulbs;
    /// lamps sold to growers by watts, whose claims no rule binds.</remarks>
    public static IReadOnlyList<(double Watts, double Lumens)> Claims { get; } =
        [(40, 450), (60, 800), (75, 1100), (100, 1600), (150, 2600)];

    /// <summary>Lumens that a claim promises.</summary>
    /// <param name="claim">Watts that the bulb stands for, W, from 40 to 150.</param>
    /// <returns>Lumens, straight between the rows.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>Source: see <see cref="Claims"/>; between the rows it is a guess.</remarks>
    public static double Lumens(double claim)
    {
        Range.Within(claim, Claims[0].Watts, Claims[^1].Watts);
        var i = 1;
        while (Claims[i].Watts < claim)
        {
            i++;
        }
        var ((w1, l1), (w2, l2)) = (Claims[i - 1], Claims[i]);
        return l1 + (claim - w1) / (w2 - w1) * (l2 - l1);
    }
}
