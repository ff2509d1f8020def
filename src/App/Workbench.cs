using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Files;

namespace Runnel.App;

/// <summary>One opened plan: read, assessed, changed, undone and saved.</summary>
public sealed class Workbench
{
    private readonly Stack<PlanFile> _undo = new();
    private readonly PlanFile _opened;
    private PlanFile _saved;

    private Workbench(PlanFile file) => (File, _opened, _saved) = (file, file, file);

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
    public static Workbench Open(string path) => new(PlanFile.Read(path));

    /// <summary>A plan that is already in memory.</summary>
    public static Workbench Of(PlanFile file) => new(file);

    /// <summary>All figures and findings, or null while the plan cannot be read.</summary>
    /// <param name="draws">How often the plan's ranges are drawn; 0 for the likely values only.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancel">Stops between draws.</param>
    public Assessment? Assess(int draws = 0, IProgress<double>? progress = null, CancellationToken cancel = default) =>
        File.Plan is { } plan ? Assessor.Assess(plan, Shelves.Standard, draws: draws, progress: progress, cancel: cancel) : null;

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
