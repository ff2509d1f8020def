namespace Runnel.Engine.Fish;

/// <summary>How much fish, and how close together.</summary>
public static class Stocking
{
    /// <summary>Mass of a number of fish.</summary>
    /// <param name="number">How many, from 0 to 1 000 000.</param>
    /// <param name="weight">Mean weight of one, g, from 0.01 to 50 000.</param>
    /// <returns>Live mass, kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>M = n w. Error: that of the mean weight; weigh a sample of at least 20 fish (common practice, no source).</remarks>
    public static double Mass(double number, double weight) => Range.Within(number, 0, 1e6) * Range.Within(weight, 0.01, 5e4) / 1000;

    /// <summary>Stocking density.</summary>
    /// <param name="mass">Live mass of all fish, kg, from 0 to 100 000.</param>
    /// <param name="volume">Water in the tank that they live in, L, from 1 to 10 000 000; not the water of the whole loop.</param>
    /// <returns>Stocking density, kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>D = M / V. By definition.</remarks>
    public static double Density(double mass, double volume) => Range.Within(mass, 0, 1e5) / (Range.Within(volume, 1, 1e7) / 1000);
}
