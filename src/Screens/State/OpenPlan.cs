using System.Diagnostics;
using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Plan;
using Runnel.Files;

namespace Runnel.Screens.State;

/// <summary>The plan that the page shows, with the figures of its present text.</summary>
/// <remarks>
/// One for the whole host, not one for each connection: the host serves one plan to one person on the same machine, and a browser that
/// loses its connection, or is closed and opened again, must find the unsaved changes where they were. Two tabs therefore show the same
/// changes. Every member may be called from any thread.
/// </remarks>
public sealed class OpenPlan : IDisposable
{
    /// <summary>How long nothing must change before ranges are drawn again.</summary>
    public static readonly TimeSpan UsualIdle = TimeSpan.FromMilliseconds(400);

    private readonly Lock _gate = new();
    private readonly Func<Workbench> _read;
    private readonly TimeSpan _idle;
    private readonly int _draws;
    private readonly Stack<Edit> _edits = new();
    private Workbench _bench;
    private CancellationTokenSource? _drawing;

    /// <param name="read">Reads the plan; called again when the reader of the page asks for it.</param>
    /// <param name="idle">How long nothing must change before ranges are drawn; <see cref="UsualIdle"/> when left out.</param>
    /// <param name="draws">How often the plan's ranges are drawn; 0 never.</param>
    public OpenPlan(Func<Workbench> read, TimeSpan? idle = null, int draws = Assessor.UsualDraws)
    {
        ArgumentNullException.ThrowIfNull(read);
        (_read, _idle, _draws) = (read, idle ?? UsualIdle, draws);
        _bench = read();
        UnitsShown = _bench.Style.System;
        Compute();
    }

    /// <summary>Raised after anything shown has changed; on any thread.</summary>
    public event EventHandler? Updated;

    /// <summary>The plan's file as it stands now, changes included.</summary>
    public PlanFile File => _bench.File;

    /// <summary>Figures and findings of the present text; null while the plan has errors.</summary>
    public Assessment? Assessment { get; private set; }

    /// <summary>The figures of the text as it was last read or saved, to say what a number was before.</summary>
    public Assessment? Before { get; private set; }

    /// <summary>Why figures could not be worked out although the plan was read; null otherwise.</summary>
    public string? Failure { get; private set; }

    /// <summary>True while ranges of the present text are still being worked out.</summary>
    public bool RangesPending { get; private set; }

    /// <summary>Units on screen: as the plan says until switched.</summary>
    public UnitSystem UnitsShown { get; private set; }

    /// <summary>How numbers are written.</summary>
    public Style Style => _bench.Style with { System = UnitsShown };

    /// <summary>True when something has been changed and not saved.</summary>
    public bool Changed => _bench.Changed;

    /// <summary>True when there is a change to take back.</summary>
    public bool CanUndo => _bench.CanUndo;

    /// <summary>The changes since the plan was read or saved, the oldest first.</summary>
    public IReadOnlyList<Edit> Edits
    {
        get
        {
            lock (_gate)
            {
                return [.. _edits.Reverse()];
            }
        }
    }

    /// <summary>Why the last save did not happen, in words; null when there is nothing to say.</summary>
    public string? SaveTrouble { get; private set; }

    /// <summary>True right after a save, until the next change.</summary>
    public bool JustSaved { get; private set; }

    /// <summary>Changes that a fresh reading of the file refused, with the reasons.</summary>
    public IReadOnlyList<string> Lost { get; private set; } = [];

    /// <summary>Address of the value that is being typed, or null.</summary>
    public string? Typing { get; private set; }

    /// <summary>Counts how often values have been replaced other than by typing: by undoing or reading the file again.</summary>
    public int Replaced { get; private set; }

    /// <summary>How long the last change took from the call to all likely values, for whoever measures.</summary>
    public TimeSpan LastTook { get; private set; }

    /// <summary>Takes what is being typed for one value. Keys typed one after another into the same value are one change to undo.</summary>
    /// <returns>What is wrong with the text, in words; empty when it was taken.</returns>
    public IReadOnlyList<string> Type(string path, string text)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(text);
        var started = Stopwatch.GetTimestamp();
        lock (_gate)
        {
            if (Refused(path, text) is { Count: > 0 } refused)
            {
                return refused;
            }
            var same = Typing == path && _edits.TryPeek(out var last) && last.Path == path;
            if (same)
            {
                TakeBack();
            }
            if (Put(path, text) is { Count: > 0 } errors)
            {
                return errors;
            }
            Typing = path;
            Compute();
        }
        LastTook = Stopwatch.GetElapsedTime(started);
        Updated?.Invoke(this, EventArgs.Empty);
        return [];
    }

    /// <summary>Ends the typing of a value: what is typed next is another change.</summary>
    public void Rest()
    {
        lock (_gate)
        {
            if (Typing is null)
            {
                return;
            }
            Typing = null;
        }
        Updated?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Takes the last change back.</summary>
    public void Undo()
    {
        lock (_gate)
        {
            TakeBack();
            Typing = null;
            Replaced++;
            Compute();
        }
        Updated?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Writes the plan to its file. When that cannot be done, <see cref="SaveTrouble"/> says why and every change stays.</summary>
    public void Save()
    {
        lock (_gate)
        {
            try
            {
                _bench.Save();
                _edits.Clear();
                (Typing, SaveTrouble, Lost, JustSaved, Before) = (null, null, [], true, Assessment);
            }
            catch (PlanSaveException e)
            {
                SaveTrouble = e.Message;
            }
        }
        Updated?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Reads the file again, with the changes made here put on top of it, or without them.</summary>
    public void ReadAgain(bool keepChanges)
    {
        lock (_gate)
        {
            var edits = keepChanges ? _edits.Reverse().ToList() : [];
            _bench = _read();
            Replaced++;
            _edits.Clear();
            (Typing, SaveTrouble, JustSaved) = (null, null, false);
            Before = null;
            Compute();
            var lost = new List<string>();
            foreach (var edit in edits)
            {
                var refused = Refused(edit.Path, edit.Text);
                if ((refused.Count > 0 ? refused : Put(edit.Path, edit.Text)) is { Count: > 0 } why)
                {
                    lost.Add($"{edit.Where}, “{edit.Text}”: {why[0]}");
                }
            }
            Lost = lost;
            Compute();
        }
        Updated?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Switches the units on screen; the plan's file is not touched.</summary>
    public void Show(UnitSystem system)
    {
        UnitsShown = system;
        Updated?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Stops what is being drawn.</summary>
    public void Dispose()
    {
        _drawing?.Cancel();
        _drawing?.Dispose();
    }

    private List<string> Refused(string path, string text)
    {
        if (!File.CanChange(path))
        {
            return [$"the file has no single value at {Edit.Named(path)}; change it in the file"];
        }
        try
        {
            return [.. File.With(path, text).Errors.Select(Words)];
        }
        catch (ArgumentException e)
        {
            return [FirstLine(e)];
        }
    }

    private List<string> Put(string path, string text)
    {
        var before = File.Text;
        if (_bench.Change(path, text) is { Count: > 0 } errors)
        {
            return [.. errors.Select(Words)];
        }
        if (File.Text != before)
        {
            _edits.Push(new(path, text));
            JustSaved = false;
        }
        return [];
    }

    private void TakeBack()
    {
        if (_bench.CanUndo)
        {
            _bench.Undo();
            _edits.TryPop(out _);
        }
    }

    private void Compute()
    {
        _drawing?.Cancel();
        _drawing?.Dispose();
        _drawing = null;
        Failure = null;
        try
        {
            Assessment = _bench.Assess();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // A plan that cannot be worked out is told in words on the page, whatever went wrong underneath.
            (Assessment, Failure) = (null, FirstLine(e));
        }
        Before ??= Assessment;
        RangesPending = Assessment is not null && _draws > 0;
        if (RangesPending)
        {
            _drawing = new CancellationTokenSource();
            _ = DrawAsync(_bench.File, _drawing.Token);
        }
    }

    private async Task DrawAsync(PlanFile of, CancellationToken cancel)
    {
        try
        {
            await Task.Delay(_idle, cancel);
            var bench = _bench.At(of);
            var drawn = await Task.Run(() => bench.Assess(_draws, cancel: cancel), cancel);
            lock (_gate)
            {
                if (cancel.IsCancellationRequested || File.Text != of.Text)
                {
                    return;
                }
                (Assessment, RangesPending) = (drawn, false);
                // Before anything is changed, the figures with their ranges are also the ones to compare with later.
                Before = _bench.Changed ? Before : drawn;
            }
        }
        catch (OperationCanceledException)
        {
            return;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The likely values stand; some draw lies outside what a rule holds for.
            RangesPending = false;
        }
        Updated?.Invoke(this, EventArgs.Empty);
    }

    private static string Words(PlanError error) => error.Mend.Length > 0 ? $"{error.Problem}; {error.Mend}" : error.Problem;

    private static string FirstLine(Exception e) => e.Message.Split('\n', '(')[0].Trim();
}

/// <summary>One change of one value.</summary>
/// <param name="Path">Address in the plan.</param>
/// <param name="Text">What was written there.</param>
public sealed record Edit(string Path, string Text)
{
    /// <summary>The address as a person reads it: "lamps / bed lamps / hours".</summary>
    public string Where => Named(Path);

    /// <summary>An address as a person reads it.</summary>
    public static string Named(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.Split('#')[0].Replace("/", " / ", StringComparison.Ordinal);
    }
}
