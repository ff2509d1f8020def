namespace Runnel.Engine.Sun;

/// <summary>Degrees and radians.</summary>
internal static class Angle
{
    public const double Degree = Math.PI / 180;

    public static double Sin(double degrees) => Math.Sin(degrees * Degree);

    public static double Cos(double degrees) => Math.Cos(degrees * Degree);

    public static double Tan(double degrees) => Math.Tan(degrees * Degree);

    /// <summary>The same direction from 0, included, to 360, excluded.</summary>
    public static double Turn(double degrees)
    {
        var rest = degrees % 360;
        rest = rest < 0 ? rest + 360 : rest;
        return rest >= 360 ? 0 : rest;
    }

    /// <summary>The same direction from −180 to 180.</summary>
    public static double HalfTurn(double degrees)
    {
        var turn = Turn(degrees);
        return turn > 180 ? turn - 360 : turn;
    }
}
