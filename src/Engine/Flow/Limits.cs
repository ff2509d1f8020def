namespace Runnel.Engine.Flow;

/// <summary>What the formulas of flow are fed with, in SI. Wider than a home needs, since published examples are larger.</summary>
internal static class Limits
{
    public const double MaxFlow = 2;
    public const double MinDiameter = 0.001;
    public const double MaxDiameter = 2;
    public const double MaxLength = 20000;
    public const double MaxRoughness = 0.01;
    public const double MaxRelativeRoughness = 0.1;
    public const double MinViscosity = 1e-8;
    public const double MaxViscosity = 1e-3;
    public const double MaxLossCoefficient = 10000;
    public const double MaxHead = 1000;

    public static double Flow(double value) => Range.Within(value, -MaxFlow, MaxFlow, "flow");

    public static double Diameter(double value) => Range.Within(value, MinDiameter, MaxDiameter, "diameter");

    public static double Length(double value) => Range.Within(value, 0, MaxLength, "length");

    public static double Head(double value) => Range.Within(value, 0, MaxHead, "head");
}
