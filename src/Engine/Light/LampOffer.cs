namespace Runnel.Engine.Light;

/// <summary>One lamp as it is offered.</summary>
/// <param name="Price">Price of one, money.</param>
/// <param name="Life">Hours lit until it is replaced, h, from 100 to 1 000 000.</param>
/// <param name="Watts">What it draws, W, from 0.1 to 1 000 000: never the watts it stands for.</param>
/// <param name="Photons">Photons when new, µmol/s, from 0.01 to 100 000.</param>
/// <param name="Ageing">How its light falls off.</param>
public sealed record LampOffer(double Price, double Life, double Watts, double Photons, Ageing Ageing)
{
    internal const double MinPhotons = 0.01;
    internal const double MaxPrice = 1e9;
    internal const double MaxTariff = 1e6;

    /// <summary>What a mole of photons on the leaves costs with this lamp.</summary>
    /// <param name="tariff">Price of electricity, money for each kWh, from 0 to 1 000 000.</param>
    /// <param name="reaching">Share of its photons that reaches the leaves, %, from 1 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Moles over its life = 0.0036 PPF L m s; energy for a mole = P / (3.6 PPF m s); m is the mean share of light left. Source:
    /// definitions. Not counted: fittings, changing lamps, interest, lamps that fail before their time, and what the heat is worth.</remarks>
    public LampCost Cost(double tariff, double reaching)
    {
        Range.Within(Price, 0, MaxPrice);
        Range.Within(Life, Ageing.MinHours, Ageing.MaxHours);
        Range.Within(tariff, 0, MaxTariff);
        var left = Ageing.Mean(0, Life);
        var energy = EnergyOfAMole(Watts, Photons, 100 * left, reaching);
        var moles = Photons * 0.0036 * Life * left * reaching / 100;
        return new(energy, Price / moles, energy * tariff, moles, left);
    }

    /// <summary>Electric energy for each mole of photons on the leaves.</summary>
    /// <param name="watts">What the lamp draws, W, from 0.1 to 1 000 000.</param>
    /// <param name="photons">Photons when new, µmol/s, from 0.01 to 100 000.</param>
    /// <param name="left">Mean share of its first light over its life, %, from 10 to 100.</param>
    /// <param name="reaching">Share that reaches the leaves, %, from 1 to 100.</param>
    /// <returns>Energy, kWh/mol.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>e = P / (3.6 PPF m s). Source: definitions of the mole and the kilowatt hour.</remarks>
    public static double EnergyOfAMole(double watts, double photons, double left, double reaching) =>
        Range.Within(watts, 0.1, PhotonFlux.MaxPower)
            / (3.6 * Range.Within(photons, MinPhotons, LightMap.MaxPhotons) * Range.Within(left, Ageing.MinShare, 100) / 100
                * Range.Within(reaching, 1, 100) / 100);
}

/// <summary>What a mole of photons on the leaves costs.</summary>
/// <param name="Energy">kWh/mol.</param>
/// <param name="ForLamp">Money for each mole, for the lamp.</param>
/// <param name="ForEnergy">Money for each mole, for electricity.</param>
/// <param name="Moles">Moles on the leaves over its life.</param>
/// <param name="Left">Mean share of its first light over its life, from 0 to 1.</param>
public sealed record LampCost(double Energy, double ForLamp, double ForEnergy, double Moles, double Left)
{
    /// <summary>Money for each mole, all told.</summary>
    public double Total => ForLamp + ForEnergy;
}
