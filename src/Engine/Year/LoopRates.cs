using Runnel.Engine.Numerics;
using static Runnel.Engine.Year.YearConstants;

namespace Runnel.Engine.Year;

/// <summary>
/// Rates of the loop's water: heat, oxygen, nitrogen, alkalinity, carbon dioxide, bacteria, solids. Amounts are masses in the whole loop, g; hours.
/// Equations: docs/science/year.md.
/// </summary>
internal sealed class LoopRates(LoopBody body, WaterTable table) : IRates
{
    // Solved implicitly:
    public const int TankHeat = 0, BedHeat = 1, TankOxygen = 2, BedOxygen = 3, Ammonia = 4, Nitrite = 5, Alkalinity = 6, Carbon = 7, Nitrate = 8;

    // Following:
    public const int Oxidisers = 9, NitriteOxidisers = 10, Solids = 11, SolidsNitrogen = 12, TankWater = 13;

    // Running totals:
    public const int TakenUp = 14, Lost = 15, HeaterHeat = 16, Nitrified = 17, Evaporated = 18;

    public const int StiffCount = 9;
    public const int Count = 19;

    private readonly LoopBody _body = body;
    private readonly WaterTable _table = table;

    /// <summary>Full films, g of cells.</summary>
    public double MostOxidisers { get; } = body.FilterArea * FilmRate * YieldFirst / Filter.NitrifierGrowth.AmmoniaOxidisersAt20;

    /// <inheritdoc cref="MostOxidisers"/>
    public double MostNitriteOxidisers { get; } = body.FilterArea * FilmRateSecond * YieldSecond / Filter.NitrifierGrowth.NitriteOxidisersAt20;

    /// <summary>Air, °C; vapour in it, kPa; heat of light in the beds, W; transpiration, kg/h.</summary>
    public double Air { get; set; }

    public double AirVapour { get; set; }

    public double BedWarming { get; set; }

    public double Transpired { get; set; }

    /// <summary>Given off by fish, g/h: ammonia nitrogen, degradable solids, nitrogen in them. Oxygen for digestion, g/h, and at rest, g/h at 20 °C.</summary>
    public double Excreted { get; set; }

    public double SolidsIn { get; set; }

    public double SolidsNitrogenIn { get; set; }

    public double DigestionDemand { get; set; }

    public double RestDemand { get; set; }

    /// <summary>Nitrogen that the crops would take up with plenty, g/h.</summary>
    public double Wanted { get; set; }

    /// <summary>False while there is no electricity.</summary>
    public bool Powered { get; set; } = true;

    public int Size => Count;

    public int Stiff => StiffCount;

    public void Rates(ReadOnlySpan<double> state, Span<double> rates) => Evaluate(state, rates, default);

    public void RatesAndSlopes(ReadOnlySpan<double> state, Span<double> rates, Span<double> slopes) => Evaluate(state, rates, slopes);

    /// <summary>Hydrogen ions, mol/L, and carbon dioxide, mg/L, from masses in a volume.</summary>
    public (double Hydrogen, double CarbonDioxide) Acidity(double temperature, double alkalinity, double carbon, double volume) =>
        Balance(_table.Get(WaterTable.At(temperature), WaterTable.Acid), alkalinity, carbon, volume);

    private static (double Hydrogen, double CarbonDioxide) Balance(double k, double alkalinity, double carbon, double volume)
    {
        var perLitre = 1 / (volume * 1000);
        var a = alkalinity * perLitre / Water.Carbonate.GramsPerEquivalent;
        var c = Math.Max(0, carbon) * perLitre / Water.Carbonate.GramsPerMole;
        // (H + A)(H + K1) = K1 C + ... : H² + (A + K1) H − K1 (C − A) = 0.
        var b = a + k;
        var free = k * Math.Max(c - a, 1e-9 * c + 1e-12);
        var hydrogen = 2 * free / (b + Math.Sqrt(b * b + 4 * free));
        return (hydrogen, c * hydrogen / (hydrogen + k) * Water.Carbonate.GramsPerMole * 1000);
    }

    private void Evaluate(ReadOnlySpan<double> y, Span<double> f, Span<double> s)
    {
        var slopes = !s.IsEmpty;
        var tank = WaterTable.At(y[TankHeat]);
        var bed = WaterTable.At(y[BedHeat]);
        var vt = Math.Max(y[TankWater], 1e-6);
        var vb = _body.BedNode;
        var v = vt + _body.BedWater;
        var flow = Powered ? _body.PumpFlow : 0;

        // Heat.
        var perTank = 1 / (HeatStore * vt);
        var perBed = 1 / (HeatStore * (vb + _body.BedHeatStore));
        var over = _table.Get(tank, WaterTable.Vapour) - AirVapour;
        var overBed = _table.Get(bed, WaterTable.Vapour) - AirVapour;
        var evaporation = _body.TankOpen * _body.EvaporationHeat * Math.Max(0, over);
        var bedEvaporation = _body.BedOpen * _body.EvaporationHeat * Math.Max(0, overBed);
        var call = (_body.Keep - y[TankHeat]) / _body.HeaterBand + 0.5;
        var heater = Powered ? _body.HeaterWatts * Math.Clamp(call, 0, 1) : 0;
        var exchange = HeatStore * flow;
        f[TankHeat] = (_body.TankConductance * (Air - y[TankHeat]) - evaporation + heater + (Powered ? _body.PumpHeat : 0)
            + exchange * (y[BedHeat] - y[TankHeat])) * perTank;
        f[BedHeat] = (_body.BedConductance * (Air - y[BedHeat]) - bedEvaporation + BedWarming + exchange * (y[TankHeat] - y[BedHeat])) * perBed;
        f[HeaterHeat] = heater;
        var vapour = 3.6 / (2501 - 2.361 * y[TankHeat]) * (evaporation + bedEvaporation);
        f[Evaporated] = vapour;
        f[TankWater] = -(vapour + Transpired) / 1000;

        // Acidity.
        var k = _table.Get(tank, WaterTable.Acid);
        var (hydrogen, dioxide) = Balance(k, y[Alkalinity], y[Carbon], v);
        var pH = 1 / (1 + hydrogen / AcidHalf + BasicHalf / hydrogen);

        // Oxygen.
        var ct = Math.Max(0, y[TankOxygen]) / vt;
        var cb = Math.Max(0, y[BedOxygen]) / vb;
        var kt = _body.TankSurface + (Powered ? _body.Bubbles + (_body.PumpFlow > 0 ? _body.Falls : 0) : 0);
        var kb = flow > 0 ? _body.BedExchange : 0;
        var fishDemand = DigestionDemand + RestDemand * _table.Get(tank, WaterTable.Breath);
        var breath = fishDemand * ct / (HalfOxygenFish + ct);

        // Solids.
        var decay = _table.Get(bed, WaterTable.Solids);
        var broken = decay * Math.Max(0, y[Solids]);
        var mineral = decay * Math.Max(0, y[SolidsNitrogen]);
        var aerobic = cb / (HalfOxygenSolids + cb);
        var solidsBreath = SolidsOxygen * (1 - AnoxicShare) * broken * aerobic;
        var no3 = Math.Max(0, y[Nitrate]) / v;
        var anoxic = AnoxicShare + (1 - AnoxicShare) * (1 - aerobic);
        var lossMost = SolidsOxygen / NitrateOxygen * broken * anoxic;
        var lost = lossMost * no3 / (HalfNitrateLost + no3);

        // Nitrifiers.
        var tan = Math.Max(0, y[Ammonia]) / v;
        var no2 = Math.Max(0, y[Nitrite]) / v;
        var alk = Math.Max(0, y[Alkalinity]) / v;
        var oxygen1 = cb / (HalfOxygenFirst + cb);
        var oxygen2 = cb / (HalfOxygenSecond + cb);
        var alkaline = alk / (HalfAlkalinity + alk);
        var growth1 = _table.Get(bed, WaterTable.First) / YieldFirst * pH * y[Oxidisers];
        var growth2 = _table.Get(bed, WaterTable.Second) / YieldSecond * pH * y[NitriteOxidisers];
        var nh3 = tan * _table.Get(tank, WaterTable.Ammonium) / (_table.Get(tank, WaterTable.Ammonium) + hydrogen);
        growth2 /= 1 + nh3 / AmmoniaHolds;
        var kinetic1 = growth1 * oxygen1 * alkaline * tan / (HalfAmmonia + tan);
        var kinetic2 = growth2 * oxygen2 * no2 / (HalfNitrite + no2);
        // What the pump brings limits what the bacteria can take.
        var share1 = Share(flow * tan, kinetic1);
        var share2 = Share(flow * no2, kinetic2);
        var rate1 = kinetic1 * share1;
        var rate2 = kinetic2 * share2;

        var uptake = flow > 0 ? Wanted * no3 / (HalfNitrateRoots + no3) : 0;
        var respired = breath + solidsBreath + NitrateOxygen * lost;

        var satT = _table.Get(tank, WaterTable.Oxygen);
        var satB = _table.Get(bed, WaterTable.Oxygen);
        f[TankOxygen] = kt * (satT - ct) + flow * (cb - ct) - breath;
        f[BedOxygen] = kb * (satB - cb) + flow * (ct - cb) - OxygenFirst * rate1 - OxygenSecond * rate2 - solidsBreath;
        f[Ammonia] = Excreted + mineral - rate1;
        f[Nitrite] = rate1 - rate2;
        f[Nitrate] = rate2 - uptake - lost;
        f[Alkalinity] = AlkalinityEachNitrogen * (Excreted + mineral + lost + RootAlkalinity * uptake) - AlkalinityFirst * rate1;
        var strip = StrippingBubbles * (Powered ? _body.Bubbles : 0)
            + StrippingSurface * (kt - (Powered ? _body.Bubbles : 0) + kb);
        f[Carbon] = CarbonEachOxygen * respired - strip * (dioxide - _body.CarbonDioxide * _table.Get(tank, WaterTable.CarbonDioxide));
        f[Oxidisers] = YieldFirst * rate1 * (1 - y[Oxidisers] / Math.Max(MostOxidisers, 1e-12)) - Decay * y[Oxidisers];
        f[NitriteOxidisers] = YieldSecond * rate2 * (1 - y[NitriteOxidisers] / Math.Max(MostNitriteOxidisers, 1e-12)) - Decay * y[NitriteOxidisers];
        f[Solids] = SolidsIn - broken;
        f[SolidsNitrogen] = SolidsNitrogenIn - mineral;
        f[TakenUp] = uptake;
        f[Lost] = lost;
        f[Nitrified] = rate1;
        if (!slopes)
        {
            return;
        }

        // Slopes of heat.
        var gain = call is > 0 and < 1 && Powered ? -_body.HeaterWatts / _body.HeaterBand : 0;
        var steam = over > 0 ? _body.TankOpen * _body.EvaporationHeat * _table.Slope(tank, WaterTable.Vapour) : 0;
        var steamBed = overBed > 0 ? _body.BedOpen * _body.EvaporationHeat * _table.Slope(bed, WaterTable.Vapour) : 0;
        Set(s, TankHeat, TankHeat, (-_body.TankConductance - steam + gain - exchange) * perTank);
        Set(s, TankHeat, BedHeat, exchange * perTank);
        Set(s, BedHeat, TankHeat, exchange * perBed);
        Set(s, BedHeat, BedHeat, (-_body.BedConductance - steamBed - exchange) * perBed);
        Set(s, HeaterHeat, TankHeat, gain);

        // Slopes of the two steps of nitrification, by what they use.
        var d1 = share1 * share1;
        var d2 = share2 * share2;
        var byAmmonia = (d1 * growth1 * oxygen1 * alkaline * HalfAmmonia / Square(HalfAmmonia + tan) + Square(1 - share1) * flow) / v;
        var byOxygen1 = d1 * kinetic1 / Math.Max(oxygen1, 1e-12) * HalfOxygenFirst / Square(HalfOxygenFirst + cb) / vb;
        var byAlkalinity = d1 * kinetic1 / Math.Max(alkaline, 1e-12) * HalfAlkalinity / Square(HalfAlkalinity + alk) / v;
        var byNitrite = (d2 * growth2 * oxygen2 * HalfNitrite / Square(HalfNitrite + no2) + Square(1 - share2) * flow) / v;
        var byOxygen2 = d2 * kinetic2 / Math.Max(oxygen2, 1e-12) * HalfOxygenSecond / Square(HalfOxygenSecond + cb) / vb;
        var bySolidsOxygen = SolidsOxygen * (1 - AnoxicShare) * broken * HalfOxygenSolids / Square(HalfOxygenSolids + cb) / vb;
        var lostByNitrate = lossMost * HalfNitrateLost / Square(HalfNitrateLost + no3) / v;
        var uptakeByNitrate = flow > 0 ? Wanted * HalfNitrateRoots / Square(HalfNitrateRoots + no3) / v : 0;
        var breathByOxygen = fishDemand * HalfOxygenFish / Square(HalfOxygenFish + ct) / vt;

        Set(s, TankOxygen, TankOxygen, -(kt + flow) / vt - breathByOxygen);
        Set(s, TankOxygen, BedOxygen, flow / vb);
        Set(s, BedOxygen, TankOxygen, flow / vt);
        Set(s, BedOxygen, BedOxygen, -(kb + flow) / vb - OxygenFirst * byOxygen1 - OxygenSecond * byOxygen2 - bySolidsOxygen);
        Set(s, BedOxygen, Ammonia, -OxygenFirst * byAmmonia);
        Set(s, BedOxygen, Nitrite, -OxygenSecond * byNitrite);
        Set(s, BedOxygen, Alkalinity, -OxygenFirst * byAlkalinity);
        Set(s, Ammonia, BedOxygen, -byOxygen1);
        Set(s, Ammonia, Ammonia, -byAmmonia);
        Set(s, Ammonia, Alkalinity, -byAlkalinity);
        Set(s, Nitrite, BedOxygen, byOxygen1 - byOxygen2);
        Set(s, Nitrite, Ammonia, byAmmonia);
        Set(s, Nitrite, Alkalinity, byAlkalinity);
        Set(s, Nitrite, Nitrite, -byNitrite);
        Set(s, Nitrate, BedOxygen, byOxygen2);
        Set(s, Nitrate, Nitrite, byNitrite);
        Set(s, Nitrate, Nitrate, -uptakeByNitrate - lostByNitrate);
        Set(s, Alkalinity, BedOxygen, -AlkalinityFirst * byOxygen1);
        Set(s, Alkalinity, Ammonia, -AlkalinityFirst * byAmmonia);
        Set(s, Alkalinity, Alkalinity, -AlkalinityFirst * byAlkalinity);
        Set(s, Carbon, TankOxygen, CarbonEachOxygen * breathByOxygen);
        Set(s, Carbon, Carbon, -strip / v);
        Set(s, Carbon, Alkalinity, strip / v * (Water.Carbonate.GramsPerMole / Water.Carbonate.GramsPerEquivalent));
        Set(s, TakenUp, Nitrate, uptakeByNitrate);
        Set(s, Lost, Nitrate, lostByNitrate);
        Set(s, Nitrified, BedOxygen, byOxygen1);
        Set(s, Nitrified, Ammonia, byAmmonia);
        Set(s, Nitrified, Alkalinity, byAlkalinity);
    }

    private static double Share(double brought, double wanted) => wanted > 0 ? brought / (brought + wanted) : 0;

    private static double Square(double x) => x * x;

    private static void Set(Span<double> slopes, int row, int column, double value) => slopes[row * StiffCount + column] = value;
}
