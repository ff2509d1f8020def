using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Runnel.Screens.Opened;

/// <summary>Moves the keyboard focus.</summary>
internal static class Focus
{
    /// <summary>Puts the focus on an element, if it is still there.</summary>
    public static async Task On(ElementReference element)
    {
        try
        {
            await element.FocusAsync();
        }
        catch (Exception e) when (e is JSException or JSDisconnectedException or InvalidOperationException or TaskCanceledException)
        {
            // Gone from the page, or the page itself is gone: the focus stays where the browser put it.
        }
    }
}
