using Runnel.Engine.Findings;
using Runnel.Engine.Quantities;
using Runnel.Engine.Year;

namespace Runnel.Engine.Assess;

/// <summary>What a grower should know of the year, with dates.</summary>
internal static class YearFindings
{
    private const double LastingAmmonia = 0.05;
    private const double MuchNitrate = 150;
    private const double LittleNitrate = 2;
    private const double ShortCut = 4;

    public static List<Finding> Of(YearInput input, YearResult run, StartUpResult? start, PowerCutResult? cut, double? alkalinityDays)
    {
        var findings = new List<Finding>();
        if (run.Failure is { } failure)
        {
            findings.Add(Failed(input, failure));
        }
        if (run.HoursRun > 0)
        {
            Worst(findings, input, run);
            Nitrate(findings, input, run);
        }
        if (cut is { HoursToCritical: { } hours })
        {
            findings.Add(new(
                "year.power-cut", hours < ShortCut ? Severity.Grave : Severity.Warning, "power",
                Said.Of($"if the power fails on {When(input, cut.Hour)}, oxygen is critical after {Amount.Of(hours, Units.HourUnit)}"),
                Said.Of($"longer than it takes you to notice and act, at least {Amount.Of(ShortCut, Units.HourUnit)}"),
                "Keep an air pump with its own battery that starts by itself, an alarm, and fewer fish. Do not feed while the power is away. This is a warning, not a promise."));
        }
        if (alkalinityDays is { } days)
        {
            findings.Add(new(
                "year.alkalinity", Severity.Warning, "water",
                Said.Of($"without doses the alkalinity falls under {Amount.Of(WorstHours.AlkalinityGone, Units.MilligramCalciumCarbonatePerLitre)} after {Amount.Of(days, Units.DayUnit)}"),
                "alkalinity measured each week and kept up", "Dose base in small parts on many days; pH falls fast once alkalinity is gone, and ammonia then builds up."));
        }
        if (start is { ReadyDay: null })
        {
            findings.Add(new(
                "year.start-never-ready", Severity.Grave, "filter", "a new loop does not take up a full dose of ammonia within eight months",
                "bacteria that keep up with the dose", "Check pump, surface for bacteria, warmth and alkalinity before any fish go in."));
        }
        for (var i = 0; i < input.Fish.Count; i++)
        {
            if (double.IsFinite(input.Fish[i].HarvestAt) && run.FishByBatch[i] <= 0 && run.Failure is null)
            {
                findings.Add(new(
                    "year.no-fish-harvest", Severity.Note, input.Fish[i].Name, "they do not reach their harvest weight within the year",
                    "a harvest within the year, or patience", "Warmer water, larger fish to begin with, or a lower harvest weight."));
            }
        }
        foreach (var mineral in Enum.GetValues<Mineral>().Where(m => run.Minerals.Short(m) > 0))
        {
            findings.Add(new(
                "year.mineral-short", Severity.Note, mineral.ToString().ToLowerInvariant(),
                Said.Of($"crops want {Amount.Of(run.Minerals.Short(mineral), Units.Gram)} more in the year than feed, water and doses bring"),
                "as much as the crops take up", "Contents of feed and crops are from memory and may be off by half: watch the leaves, test, then dose."));
        }
        return findings;
    }

    private static void Worst(List<Finding> findings, YearInput input, YearResult run)
    {
        var s = run.Series;
        if (input.Fish.Count > 0 && WorstHours.Least(s.Oxygen, run.HoursRun, h => s.FishMass[h] > 0) is var low and >= 0)
        {
            var wanted = input.Fish.Max(f => f.Oxygen);
            if (s.Oxygen[low] < wanted)
            {
                findings.Add(new(
                    "year.oxygen-low", s.Oxygen[low] < 0.75 * wanted ? Severity.Grave : Severity.Warning, "fish tank",
                    Said.Of($"oxygen falls to {Amount.Of(s.Oxygen[low], Units.MilligramPerLitre)} on {When(input, low)}"),
                    Said.Of($"at least {Amount.Of(wanted, Units.MilligramPerLitre)}"), "More air, fewer fish, smaller meals on warm days."));
            }
        }
        foreach (var fish in input.Fish.DistinctBy(f => f.Name))
        {
            var (cold, warm) = (WorstHours.Least(s.TankTemperature, run.HoursRun, h => s.FishMass[h] > 0), WorstHours.Most(s.TankTemperature, run.HoursRun));
            if (cold >= 0 && s.TankTemperature[cold] < fish.SurvivesLow)
            {
                findings.Add(new(
                    "year.cold", Severity.Grave, fish.Name, Said.Of($"water of {Amount.Of(s.TankTemperature[cold], Units.Celsius)} on {When(input, cold)}"),
                    Said.Of($"over {Amount.Of(fish.SurvivesLow, Units.Celsius)}"), "A heater, insulation and a lid, or another kind of fish."));
            }
            if (warm >= 0 && s.TankTemperature[warm] > fish.SurvivesHigh)
            {
                findings.Add(new(
                    "year.heat", Severity.Grave, fish.Name, Said.Of($"water of {Amount.Of(s.TankTemperature[warm], Units.Celsius)} on {When(input, warm)}"),
                    Said.Of($"under {Amount.Of(fish.SurvivesHigh, Units.Celsius)}"), "Shade, night air, cooler top-up water; feed less and give more air."));
            }
        }
        var toxic = WorstHours.Most(s.FreeAmmonia, run.HoursRun);
        if (input.Fish.Count > 0 && s.FreeAmmonia[toxic] > LastingAmmonia)
        {
            findings.Add(new(
                "year.ammonia", Severity.Grave, "fish tank",
                Said.Of($"un-ionised ammonia reaches {Amount.Of(s.FreeAmmonia[toxic], Units.MilligramNitrogenPerLitre)} on {When(input, toxic)}"),
                Said.Of($"under {Amount.Of(LastingAmmonia, Units.MilligramNitrogenPerLitre)}"), "Feed less, more surface for bacteria, more flow; stop feeding when a test shows it.",
                Source: "University of Florida EDIS FA16, from Emerson et al. 1975: harm over 0.05 mg/L"));
        }
    }

    private static void Nitrate(List<Finding> findings, YearInput input, YearResult run)
    {
        var s = run.Series;
        var most = WorstHours.Most(s.Nitrate, run.HoursRun);
        if (s.Nitrate[most] > MuchNitrate)
        {
            findings.Add(new(
                "year.nitrate-high", Severity.Warning, "water", Said.Of($"nitrate reaches {Amount.Of(s.Nitrate[most], Units.MilligramNitrogenPerLitre)} on {When(input, most)}"),
                Said.Of($"under {Amount.Of(MuchNitrate, Units.MilligramNitrogenPerLitre)}"), "More or hungrier crops, less feed, or some water changed."));
        }
        var scarce = 0;
        for (var h = 0; h < run.HoursRun; h++)
        {
            scarce += s.Nitrate[h] < LittleNitrate && s.CropMass[h] > 0 ? 1 : 0;
        }
        if (scarce > 14 * 24)
        {
            findings.Add(new(
                "year.nitrate-low", Severity.Warning, "beds",
                Said.Of($"on {scarce / 24} days nitrate is under {Amount.Of(LittleNitrate, Units.MilligramNitrogenPerLitre)}, first on {When(input, Array.FindIndex(s.Nitrate, n => n < LittleNitrate))}"),
                "enough for the crops to grow on", "More fish or feed, or fewer plants."));
        }
    }

    private static Finding Failed(YearInput input, YearFailure failure)
    {
        var who = failure.Index >= 0 ? input.Fish[failure.Index].Name : "the loop";
        var (saw, wanted, act) = failure.Kind switch
        {
            FailureKind.NoWater => (Said.Of($"there is {Amount.Of(failure.Value, Units.CubicMetre)} of water left for the pump"), Said.Of($"at least {Amount.Of(failure.Limit, Units.CubicMetre)}"), "Give the vessels water, and top up."),
            FailureKind.NoWeather => (Said.Of($"no weather for {When(input, failure.Hour)}"), "a value for every hour", "Mend the gap in the weather file."),
            FailureKind.LowOxygen => (Said.Of($"oxygen of {Amount.Of(failure.Value, Units.MilligramPerLitre)}: the fish die"), Said.Of($"over {Amount.Of(failure.Limit, Units.MilligramPerLitre)}"), "Fewer fish, more air, more flow."),
            FailureKind.TooCold => (Said.Of($"a day at {Amount.Of(failure.Value, Units.Celsius)}: the fish die"), Said.Of($"over {Amount.Of(failure.Limit, Units.Celsius)}"), "A heater and insulation, or another kind of fish."),
            FailureKind.TooWarm => (Said.Of($"water of {Amount.Of(failure.Value, Units.Celsius)}: the fish die"), Said.Of($"under {Amount.Of(failure.Limit, Units.Celsius)}"), "Shade and cooling, or another kind of fish."),
            FailureKind.Ammonia => (Said.Of($"un-ionised ammonia of {Amount.Of(failure.Value, Units.MilligramNitrogenPerLitre)}: the fish die"), Said.Of($"under {Amount.Of(LastingAmmonia, Units.MilligramNitrogenPerLitre)}"), "Fewer fish, a running pump, more surface for bacteria."),
            FailureKind.Freezing => (Said.Of($"water of {Amount.Of(failure.Value, Units.Celsius)} freezes"), "water that stays open", "A heater and insulation, or emptied for the winter."),
            FailureKind.Boundless => (Said.FromString("numbers beyond all bounds"), "sizes that can be built", "Look for an absurd size, number or flow in the plan."),
            _ => throw new ArgumentOutOfRangeException(nameof(failure), failure.Kind, "unknown failure"),
        };
        return new("year.failed", Severity.Grave, who, Said.Of($"the year ends on {When(input, failure.Hour)}").With(saw), wanted, act);
    }

    private static Said With(this Said first, Said then) => new([.. first.Pieces, ": ", .. then.Pieces]);

    private static string When(YearInput input, int hour) => $"{YearAssessment.DayOf(input, hour)}, {(input.StartHour + Math.Max(0, hour)) % 24}:00";
}
