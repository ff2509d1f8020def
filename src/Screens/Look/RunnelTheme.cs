using MudBlazor;

namespace Runnel.Screens.Look;

/// <summary>Type, colour and spacing of the page. The same values stand as custom properties in runnel.css.</summary>
public static class RunnelTheme
{
    private static readonly string[] Family = ["system-ui", "-apple-system", "Segoe UI", "Noto Sans", "Liberation Sans", "sans-serif"];

    /// <summary>The theme.</summary>
    public static readonly MudTheme Theme = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#0b5a60",
            PrimaryContrastText = "#ffffff",
            Secondary = "#7a4a12",
            Background = "#f7f5f0",
            Surface = "#ffffff",
            TextPrimary = "#1d2628",
            TextSecondary = "#4c585b",
            ActionDefault = "#37474a",
            Error = "#a3231f",
            Warning = "#8a5200",
            Success = "#23683a",
            Info = "#2b5580",
            LinesDefault = "#d9d5ca",
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "8px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Family, FontSize = "1rem", LineHeight = "1.5", LetterSpacing = "normal" },
            Button = new ButtonTypography { FontFamily = Family, FontSize = "0.95rem", FontWeight = "600", TextTransform = "none", LetterSpacing = "normal" },
        },
    };
}
