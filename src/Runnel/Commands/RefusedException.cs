using Runnel.Files;

namespace Runnel.Host.Commands;

/// <summary>What was asked cannot be answered as it stands: all the reasons at once.</summary>
public sealed class RefusedException : Exception
{
    public RefusedException()
    {
    }

    public RefusedException(string message)
        : this("", "", message, "")
    {
    }

    public RefusedException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Several reasons.</summary>
    public RefusedException(IReadOnlyList<PlanError> errors)
        : base(string.Join(Environment.NewLine, errors.Select(e => e.ToString()))) => Errors = errors;

    /// <summary>One reason that stands in no file.</summary>
    public RefusedException(string where, string read, string problem, string mend)
        : this([new PlanError("", 0, 0, where, read, problem, mend)])
    {
    }

    public IReadOnlyList<PlanError> Errors { get; } = [];
}
