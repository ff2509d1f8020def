using Microsoft.AspNetCore.Components;
using Runnel.App;
using Runnel.Screens.Opened;

namespace Runnel.Screens.State;

/// <summary>What every part of one page needs: the plan, how numbers are written, and which figure is open.</summary>
public sealed class PageState(OpenPlan plan)
{
    /// <summary>The plan.</summary>
    public OpenPlan Plan { get; } = plan;

    /// <summary>The open figure and the way to it.</summary>
    public Trail Trail { get; } = new();

    /// <summary>How numbers are written.</summary>
    public Style Style => Plan.Style;

    /// <summary>The control that opened the panel, which gets the focus back when it closes.</summary>
    public ElementReference? Opener { get; set; }
}
