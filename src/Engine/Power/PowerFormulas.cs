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

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [EnergyFromPower, EnergyFromMeanPower, ContinuousLoadLimit, BatteryRunTime];
}
