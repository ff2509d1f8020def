namespace Runnel.Engine.Year;

/// <summary>Hour by hour: the value at the end of each hour of the run. Arrays are as long as the run that was asked for.</summary>
public sealed class YearSeries
{
    internal YearSeries(int hours)
    {
        TankTemperature = new double[hours];
        BedTemperature = new double[hours];
        Oxygen = new double[hours];
        BedOxygen = new double[hours];
        Ammonia = new double[hours];
        Nitrite = new double[hours];
        Nitrate = new double[hours];
        Alkalinity = new double[hours];
        PH = new double[hours];
        FreeAmmonia = new double[hours];
        Solids = new double[hours];
        Water = new double[hours];
        FishMass = new double[hours];
        CropMass = new double[hours];
        HeaterPower = new double[hours];
        OxygenDemand = new double[hours];
    }

    /// <summary>Water temperature, °C.</summary>
    public double[] TankTemperature { get; }

    /// <inheritdoc cref="TankTemperature"/>
    public double[] BedTemperature { get; }

    /// <summary>Dissolved oxygen where the fish are, mg/L.</summary>
    public double[] Oxygen { get; }

    /// <summary>Dissolved oxygen in the beds, mg/L.</summary>
    public double[] BedOxygen { get; }

    /// <summary>Total ammonia nitrogen, nitrite and nitrate nitrogen, mg N/L.</summary>
    public double[] Ammonia { get; }

    /// <inheritdoc cref="Ammonia"/>
    public double[] Nitrite { get; }

    /// <inheritdoc cref="Ammonia"/>
    public double[] Nitrate { get; }

    /// <summary>Alkalinity as CaCO3, mg/L.</summary>
    public double[] Alkalinity { get; }

    public double[] PH { get; }

    /// <summary>Un-ionised ammonia nitrogen, mg N/L.</summary>
    public double[] FreeAmmonia { get; }

    /// <summary>Solids in the loop that still break down, dry g.</summary>
    public double[] Solids { get; }

    /// <summary>Water in the loop, L.</summary>
    public double[] Water { get; }

    /// <summary>Live fish, kg.</summary>
    public double[] FishMass { get; }

    /// <summary>Crops standing, dry g.</summary>
    public double[] CropMass { get; }

    /// <summary>Heater, mean over the hour, W.</summary>
    public double[] HeaterPower { get; }

    /// <summary>Oxygen that the fish use, g/h.</summary>
    public double[] OxygenDemand { get; }
}

/// <summary>What happened, and when.</summary>
public enum YearEventKind
{
    FishIn,
    FishHarvested,
    Planted,
    Picked,
    Cleared,
    BaseDosed,
    IronDosed,
    AmmoniaDosed,
}

/// <summary>One event.</summary>
/// <param name="Hour">Hours after the start of the run.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Index">Which batch of fish or stand of crops; −1 for doses.</param>
/// <param name="Amount">Fish: kg; crops: kg fresh; doses: g of product, for ammonia g N, for iron g Fe.</param>
public readonly record struct YearEvent(int Hour, YearEventKind Kind, int Index, double Amount);

/// <summary>Why a run ended early.</summary>
public enum FailureKind
{
    NoWater,
    NoWeather,
    LowOxygen,
    TooCold,
    TooWarm,
    Ammonia,
    Freezing,
    Boundless,
}

/// <summary>The hour at which the loop failed and why.</summary>
/// <param name="Hour">Hours after the start of the run.</param>
/// <param name="Kind">What went wrong.</param>
/// <param name="Index">Which batch of fish came to harm; −1 for none.</param>
/// <param name="Value">The value met: mg/L, °C or m³.</param>
/// <param name="Limit">The limit it crossed.</param>
public sealed record YearFailure(int Hour, FailureKind Kind, int Index, double Value, double Limit);

/// <summary>Where the nitrogen went, g.</summary>
/// <param name="In">In feed and dosed ammonia.</param>
/// <param name="Fish">Kept by fish: taken out, dead, and more standing than at the start.</param>
/// <param name="Plants">Taken up by crops.</param>
/// <param name="Water">Thrown away with water, and more dissolved than at the start.</param>
/// <param name="Solids">Caught, left over, or not yet broken down.</param>
/// <param name="Lost">Given to the air by bacteria that breathe nitrate.</param>
public readonly record struct NitrogenBalance(double In, double Fish, double Plants, double Water, double Solids, double Lost)
{
    /// <summary>What the parts leave over, as a share of what came in: rounding only.</summary>
    public double ClosingError => (In - Fish - Plants - Water - Solids - Lost) / Math.Max(1e-9, Math.Abs(In));
}

/// <summary>A run of a year: hourly series, totals, events. One result may be filled again and again without allocating.</summary>
public sealed class YearResult
{
    internal YearResult(int hours, int fish, int stands)
    {
        Series = new(hours);
        FeedByBatch = new double[fish];
        FishByBatch = new double[fish];
        CropByStand = new double[stands];
    }

    public YearSeries Series { get; }

    /// <summary>Hours that ran: all, or as many as there were before a failure.</summary>
    public int HoursRun { get; internal set; }

    /// <summary>Why it ended early, or null.</summary>
    public YearFailure? Failure { get; internal set; }

    /// <summary>Feed given, kg, in all and to each batch.</summary>
    public double Feed { get; internal set; }

    /// <inheritdoc cref="Feed"/>
    public double[] FeedByBatch { get; }

    /// <summary>Live fish harvested, kg, in all and of each batch.</summary>
    public double FishHarvested { get; internal set; }

    /// <inheritdoc cref="FishHarvested"/>
    public double[] FishByBatch { get; }

    /// <summary>Fish gained, kg: harvested and standing, less what was put in.</summary>
    public double FishGained { get; internal set; }

    /// <summary>Fresh crop picked, kg, in all and from each stand.</summary>
    public double CropPicked { get; internal set; }

    /// <inheritdoc cref="CropPicked"/>
    public double[] CropByStand { get; }

    /// <summary>Water topped up, evaporated and given off by crops, L.</summary>
    public double ToppedUp { get; internal set; }

    /// <inheritdoc cref="ToppedUp"/>
    public double Evaporated { get; internal set; }

    /// <inheritdoc cref="ToppedUp"/>
    public double Transpired { get; internal set; }

    /// <summary>Heaters, kWh in each calendar month from January.</summary>
    public double[] HeatByMonth { get; } = new double[12];

    /// <summary>Heaters, kWh.</summary>
    public double Heat { get; internal set; }

    /// <summary>Base dosed, g of product; iron dosed, g Fe; ammonia dosed, g N.</summary>
    public double Base { get; internal set; }

    /// <inheritdoc cref="Base"/>
    public double Iron { get; internal set; }

    /// <inheritdoc cref="Base"/>
    public double AmmoniaDosed { get; internal set; }

    /// <summary>Ammonia nitrogen that was nitrified, g.</summary>
    public double Nitrified { get; internal set; }

    public NitrogenBalance Nitrogen { get; internal set; }

    /// <summary>Minerals: what came in, what crops took, g.</summary>
    public MineralBalance Minerals { get; } = new();

    /// <summary>Fish stocked, picked, dosed, in order.</summary>
    public IReadOnlyList<YearEvent> Events => Happened;

    /// <summary>Hours from the start of the power cut until oxygen was critical, or null.</summary>
    public double? HoursFromCutToCritical { get; internal set; }

    /// <summary>Steps that were cut up to keep amounts above nothing.</summary>
    public int StepsCut { get; internal set; }

    internal List<YearEvent> Happened { get; } = new(4096);

    internal void Clear()
    {
        HoursRun = StepsCut = 0;
        Failure = null;
        HoursFromCutToCritical = null;
        Feed = FishHarvested = FishGained = CropPicked = ToppedUp = Evaporated = Transpired = Heat = Base = Iron = AmmoniaDosed = Nitrified = 0;
        Array.Clear(FeedByBatch);
        Array.Clear(FishByBatch);
        Array.Clear(CropByStand);
        Array.Clear(HeatByMonth);
        Happened.Clear();
        Minerals.Clear();
        Nitrogen = default;
    }
}
