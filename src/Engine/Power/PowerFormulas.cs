using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Power;

/// <summary>The formulary's rules about electricity.</summary>
public static class PowerFormulas
{
    private const string Subject = "Power";

    private static readonly Source KilowattHour = Source.Definition("the kilowatt hour: one kilowatt for one hour");
    private static readonly FormulaInput Hours = new("hours", "Hours on in each day", Units.HoursPerDay, 0, 24);

    /// <summary>Energy of appliances alike over some days.</summary>
    public static readonly Formula EnergyFromPower = new()
    {
        Id = "energy-from-power",
        Name = "Electric energy over some days",
        Subject = Subject,
        Equation = "E = n P t d / 1000",
        Inputs =
        [
            new("power", "Power of one while on", Units.Watt, 0, Energy.MaxPower),
            new("count", "How many alike", Units.One, 0, Energy.MaxCount, 1, "one"),
            Hours,
            new("days", "Days", Units.DayUnit, 0, Energy.MaxDays, 365, "a year"),
        ],
        Output = new("energy", "Electric energy", Units.KilowattHour),
        Sources = [KilowattHour, new("Crane, Flow of Fluids, TP-410M (2009), example 7-34, as quoted by C. Bell, fluids")],
        Confidence = Confidence.PublishedExample,
        Error = "as good as the watts: a label states the most a thing may draw, a plug meter what it draws",
        NotFor = "heaters and coolers on a thermostat; labels in VA",
        Compute = x => Energy.FromPower(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Energy of one day from mean power.</summary>
    public static readonly Formula EnergyFromMeanPower = new()
    {
        Id = "energy-from-mean-power",
        Name = "Electric energy of a day",
        Subject = Subject,
        Equation = "E = P t / 1000",
        Inputs = [new("power", "Mean power while on", Units.Watt, 0, Energy.MaxPower), Hours with { Default = 24, DefaultSource = "day and night" }],
        Output = new("energy", "Electric energy of a day", Units.KilowattHourPerDay),
        Sources = [KilowattHour],
        Confidence = Confidence.Textbook,
        Error = "as good as the watts",
        Compute = x => Energy.OfADay(x[0], x[1]),
    };

    /// <summary>What a circuit may carry for hours.</summary>
    public static readonly Formula ContinuousLoadLimit = new()
    {
        Id = "continuous-load-limit",
        Name = "Greatest load of three hours or more on a circuit",
        Subject = Subject,
        Equation = "P = 0.8 I V",
        Inputs =
        [
            new("breaker", "Rating of the breaker", Units.Ampere, 0, ContinuousLoad.MaxCurrent),
            new("voltage", "Voltage of the circuit", Units.Volt, ContinuousLoad.MinVoltage, ContinuousLoad.MaxVoltage),
        ],
        Output = new("power", "Greatest continuous load", Units.Watt),
        Sources =
        [
            new("Worked figures of the rule in electricians' texts: 15 A at 120 V, 1440 W; 20 A, 1920 W"),
            Source.FromMemory("US National Electrical Code, 210.20(A)"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "a rule of the code, without error; motors draw more amperes than their watts suggest",
        NotFor = "deciding that a circuit is safe: the local code and a licensed electrician decide",
        Compute = x => ContinuousLoad.Nec(x[0], x[1]),
    };

    /// <summary>How long a battery lasts.</summary>
    public static readonly Formula BatteryRunTime = new()
    {
        Id = "battery-run-time",
        Name = "How long a lead battery lasts",
        Subject = Subject,
        Equation = "t = H (C / (I H))^k",
        Inputs =
        [
            new("capacity", "Rated capacity", Units.AmpereHour, Power.BatteryRunTime.MinCapacity, Power.BatteryRunTime.MaxCapacity),
            new("current", "Steady current", Units.Ampere, Power.BatteryRunTime.MinCurrent, Power.BatteryRunTime.MaxCurrent),
            new("rated-time", "Time over which it is rated", Units.HourUnit, Power.BatteryRunTime.MinRatedTime, Power.BatteryRunTime.MaxRatedTime,
                Power.BatteryRunTime.UsualRatedTime, "common practice, no source: lead batteries are rated over 20 h"),
            new("exponent", "Peukert's exponent", Units.One, Power.BatteryRunTime.MinExponent, Power.BatteryRunTime.MaxExponent,
                Power.BatteryRunTime.UsualExponent, "default of a battery monitor's manual; texts print 1.05 to 1.6 by kind"),
        ],
        Output = new("time", "Time until empty", Units.HourUnit),
        Sources = [new("Peukert's law; worked example in an electrotechnical text: 100 Ah, 5 A, exponent 1.2, 14.5 h (one-ampere capacity)")],
        Confidence = Confidence.PublishedExample,
        Error = "a quarter or more: printed exponents run from 1.05 to 1.6, and age and cold take their share",
        NotFor = "emptying a lead battery on purpose: plan with half; the only guard of the fish: test it",
        Compute = x => Power.BatteryRunTime.Peukert(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Battery for a wanted time.</summary>
    public static readonly Formula BatteryForHours = new()
    {
        Id = "battery-for-hours",
        Name = "Lead battery that runs a load for a wanted time",
        Subject = Subject,
        Equation = "C = I H max(x, x^(1/k)), x = t/(D H), I = P/(V η)",
        Inputs =
        [
            new("power", "Power of what must run", Units.Watt, Power.BatteryRunTime.MinPower, Power.BatteryRunTime.MaxPower),
            new("time", "Wanted time", Units.HourUnit, Power.BatteryRunTime.MinHours, Power.BatteryRunTime.MaxHours),
            new("voltage", "Voltage of the battery", Units.Volt, Power.BatteryRunTime.MinVoltage, Power.BatteryRunTime.MaxVoltage, 12, "the usual small battery"),
            new("depth", "Share of its capacity that may be used", Units.Percent, Power.BatteryRunTime.MinShare, 100, Power.BatteryRunTime.UsualDepth,
                "common practice, no source: half, lest a lead battery dies early"),
            new("inverter", "Efficiency of the inverter", Units.Percent, Power.BatteryRunTime.MinShare, 100, Power.BatteryRunTime.UsualInverter,
                "common practice, no source; 100 for an air pump that runs on the battery itself"),
            new("rated-time", "Time over which it is rated", Units.HourUnit, Power.BatteryRunTime.MinRatedTime, Power.BatteryRunTime.MaxRatedTime,
                Power.BatteryRunTime.UsualRatedTime, "common practice, no source: lead batteries are rated over 20 h"),
            new("exponent", "Peukert's exponent", Units.One, Power.BatteryRunTime.MinExponent, Power.BatteryRunTime.MaxExponent,
                Power.BatteryRunTime.UsualExponent, "default of a battery monitor's manual; 1 leaves it out"),
        ],
        Output = new("capacity", "Rated capacity", Units.AmpereHour),
        Sources = [new("Peukert's law, solved for the capacity; worked example in an electrotechnical text: 100 Ah, 5 A, exponent 1.2, 14.5 h (one-ampere capacity)")],
        Confidence = Confidence.PublishedExample,
        Error = "a quarter or more, and age and cold take their share: buy the next size up and test it by pulling the plug",
        NotFor = "the only guard of the fish; starter batteries; charging indoors without ventilation: lead batteries give off hydrogen",
        Compute = x => Power.BatteryRunTime.ForHours(x[0], x[1], x[2], x[3], x[4], x[5], x[6]),
    };

    /// <summary>How full a circuit is.</summary>
    public static readonly Formula CircuitUse = new()
    {
        Id = "circuit-use",
        Name = "How much of what a circuit may carry for hours is taken",
        Subject = Subject,
        Equation = "u = P / (0.8 I V PF)",
        Inputs =
        [
            new("power", "Everything that runs for hours on it", Units.Watt, 0, ContinuousLoad.MaxPower),
            new("breaker", "Rating of the breaker", Units.Ampere, ContinuousLoad.MinCurrent, ContinuousLoad.MaxCurrent),
            new("voltage", "Voltage of the circuit", Units.Volt, ContinuousLoad.MinVoltage, ContinuousLoad.MaxVoltage),
            new("power-factor", "Power factor", Units.One, ContinuousLoad.MinFactor, 1, 1, "heaters; small pumps and old ballasts run at 0.3 to 0.6, for which 1 flatters the circuit"),
        ],
        Output = new("share", "Share of the circuit taken", Units.Percent),
        Sources =
        [
            new("Worked figures of the rule in electricians' texts: 15 A at 120 V, 1440 W; 20 A, 1920 W"),
            new("An electrical engineering text's shaded-pole motor: 120 V, 0.35 A, 12 W"),
            Source.FromMemory("US National Electrical Code, 210.20(A)"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "as good as the watts: a label states the most a thing may draw, a plug meter what it draws",
        NotFor = "deciding that a circuit is safe: wiring, sockets and what else hangs on it decide; so do the local code and a licensed electrician",
        Compute = x => ContinuousLoad.Use(x[0], x[1], x[2], x[3]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
        [EnergyFromPower, EnergyFromMeanPower, ContinuousLoadLimit, BatteryRunTime, BatteryForHours, CircuitUse];
}
