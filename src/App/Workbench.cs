using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Engine.Findings;
using Runnel.Engine.Heat;
using Runnel.Files;
using Runnel.Files.Weather;

namespace Runnel.App;

/// <summary>One opened plan: read, assessed, changed, undone and saved.</summary>
public sealed class Workbench
{
    private readonly Stack<PlanFile> _undo = new();
    private readonly PlanFile _opened;
    private PlanFile _saved;

    private readonly string? _path;
    private (string Name, EpwReading Reading, Climate? Climate)? _weather;

    private Workbench(PlanFile file, string? path) => (File, _opened, _saved, _path) = (file, file, file, path);

    /// <summary>The plan as it stands now, changes included.</summary>
    public PlanFile File { get; private set; }

    /// <summary>True when something has been changed and not saved.</summary>
    public bool Changed => File.Text != _saved.Text;

    /// <summary>True when there is a change to take back.</summary>
    public bool CanUndo => _undo.Count > 0;

    /// <summary>The plan as it was opened.</summary>
    public PlanFile Opened => _opened;

    /// <summary>How numbers are written for this plan.</summary>
    public Style Style => File.Plan is { } plan ? new Style(plan.Units, plan.Currency) : new Style();

    /// <summary>Reads a plan file. Errors in it are in <see cref="PlanFile.Errors"/>, never thrown.</summary>
    public static Workbench Open(string path) => new(PlanFile.Read(path), path);

    /// <summary>A plan that is already in memory.</summary>
    public static Workbench Of(PlanFile file) => new(file, null);

    /// <summary>The plan at another state of its text, beside the same weather.</summary>
    public Workbench At(PlanFile file) => new(file, _path) { _weather = _weather };

    /// <summary>What is wrong with the weather file that the plan names; empty when it names none or all is well.</summary>
    public IReadOnlyList<PlanError> WeatherErrors => Weather()?.Reading.Errors ?? [];

    /// <summary>All figures and findings, or null while the plan cannot be read.</summary>
    /// <param name="draws">How often the plan's ranges are drawn; 0 for the likely values only.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancel">Stops between draws.</param>
    public Assessment? Assess(int draws = 0, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        if (File.Plan is not { } plan)
        {
            return null;
        }
        var assessment = Assessor.Assess(plan, Shelves.Standard, Weather()?.Climate, draws, progress, cancel);
        return WeatherErrors is { Count: > 0 } errors
            ? assessment with { Findings = [.. errors.Select(Unreadable), .. assessment.Findings] }
            : assessment;
    }

    private static Finding Unreadable(PlanError error) => new(
        "weather.unreadable", Severity.Warning, $"{error.File}, line {error.Line}", error.Read.Length > 0 ? $"read “{error.Read}”: {error.Problem}" : error.Problem,
        error.Mend.Length > 0 ? error.Mend : "a whole EPW file", "Mend the file or name a climate: of the catalogue. Until then the weather is left out.", "place/weather");

    // Read once for each name: a change on screen must not read 8760 lines again.
    private (string Name, EpwReading Reading, Climate? Climate)? Weather()
    {
        if (_path is null || File.Plan?.Place.Weather is not { } name)
        {
            return null;
        }
        if (_weather?.Name != name)
        {
            var reading = WeatherReader.Beside(_path, name);
            _weather = (name, reading, reading.File?.ToClimate());
        }
        return _weather;
    }

    /// <summary>Replaces the characters of one value. A change that cannot be read is refused and leaves everything as it was.</summary>
    /// <returns>The errors, or nothing when the change was taken.</returns>
    public IReadOnlyList<PlanError> Change(string path, string value)
    {
        var changed = File.With(path, value);
        if (changed.Errors.Count > 0)
        {
            return changed.Errors;
        }
        if (changed.Text != File.Text)
        {
            _undo.Push(File);
            File = changed;
        }
        return [];
    }

    /// <summary>Takes the last change back.</summary>
    public void Undo()
    {
        if (_undo.TryPop(out var before))
        {
            File = before;
        }
    }

    /// <summary>Takes every unsaved change back.</summary>
    public void UndoAll()
    {
        File = _saved;
        _undo.Clear();
    }

    /// <summary>Writes the plan to its file.</summary>
    public void Save()
    {
        File.Save();
        _saved = File;
        _undo.Clear();
    }
}
