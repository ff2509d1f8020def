namespace Runnel.Files;

/// <summary>A plan could not be saved; the file on disk is as it was.</summary>
public sealed class PlanSaveException : IOException
{
    public PlanSaveException()
    {
    }

    public PlanSaveException(string message)
        : base(message)
    {
    }

    public PlanSaveException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
