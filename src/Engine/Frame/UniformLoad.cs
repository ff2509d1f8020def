namespace Runnel.Engine.Frame;

/// <summary>An even live load that a code asks floors of new houses to be designed for.</summary>
/// <param name="Use">What the floor is used for.</param>
/// <param name="PoundsPerSquareFoot">Live load, lb/ft².</param>
/// <remarks>
/// From the International Residential Code, table R301.5. Not a promise about a floor that stands: older floors were built to less or to
/// nothing, the load is meant as an average over the room that people and furniture make, and a bed of water weighs on its spot day and night.
/// Other countries: Eurocode 1 asks 1.5 to 2 kPa in dwellings (from memory).
/// </remarks>
public sealed record UniformLoad(string Use, double PoundsPerSquareFoot)
{
    /// <summary>Where the values come from.</summary>
    public const string Source = "International Residential Code, table R301.5, live loads of new floors";

    /// <summary>Live load, kg/m².</summary>
    public double KilogramsPerSquareMetre => PoundsPerSquareFoot * 0.45359237 / (0.3048 * 0.3048);

    /// <summary>Rooms other than for sleeping.</summary>
    public static UniformLoad Room { get; } = new("rooms", 40);

    /// <summary>Sleeping rooms.</summary>
    public static UniformLoad Bedroom { get; } = new("sleeping rooms", 30);

    /// <summary>Decks and balconies; some places ask for 60.</summary>
    public static UniformLoad Deck { get; } = new("decks and balconies", 40);

    /// <summary>Garages for cars.</summary>
    public static UniformLoad Garage { get; } = new("garages", 50);

    /// <summary>Attics with limited storage.</summary>
    public static UniformLoad Attic { get; } = new("attics with limited storage", 20);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<UniformLoad> All { get; } = [Attic, Bedroom, Room, Deck, Garage];
}
