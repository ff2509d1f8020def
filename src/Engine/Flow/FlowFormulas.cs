using Runnel.Engine.Figures;

namespace Runnel.Engine.Flow;

/// <summary>The formulary's rules about moving water and air.</summary>
public static class FlowFormulas
{
    internal const string Subject = "Flow";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        PipeFormulas.WaterDensity, PipeFormulas.WaterViscosity, PipeFormulas.PipeVelocity, PipeFormulas.Reynolds, PipeFormulas.FrictionLaminar,
        PipeFormulas.FrictionColebrook, PipeFormulas.FrictionSwameeJain, PipeFormulas.FrictionDunlop, PipeFormulas.HeadLoss,
        PipeFormulas.HeadLossHazenWilliams, PipeFormulas.FittingLoss, PipeFormulas.PipeCapacity,
        PumpFormulas.OnePointCurve, PumpFormulas.AffinityFlow, PumpFormulas.AffinityHead, PumpFormulas.AffinityPower,
        PumpFormulas.HydraulicPower, PumpFormulas.WireToWater,
        GravityFormulas.Orifice, GravityFormulas.Overflow, GravityFormulas.DrainTime, GravityFormulas.PartFullPipe, GravityFormulas.PipeFroude,
        GravityFormulas.SiphonLeastInflow, GravityFormulas.BedFillTime,
        AirFormulas.StandardTransfer, AirFormulas.FieldTransfer, AirFormulas.Pressure,
    ];
}
