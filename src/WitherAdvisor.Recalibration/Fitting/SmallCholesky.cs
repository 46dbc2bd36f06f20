namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>Cholesky factor of a matrix of a few rows, in place: one for each occasion and iteration, so nothing is allocated.</summary>
internal static class SmallCholesky
{
    /// <summary>Replaces the lower triangle of a symmetric positive matrix, row by row, by its factor L.</summary>
    public static void Factorise(double[] matrix, int size)
    {
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[i * size + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= matrix[i * size + k] * matrix[j * size + k];
                }

                matrix[i * size + j] = i == j ? Math.Sqrt(sum) : sum / matrix[j * size + j];
            }
        }
    }

    /// <summary>Replaces the columns of a matrix, stored row by row, by L⁻¹ times them.</summary>
    public static void Divide(double[] factor, int size, double[] matrix, int columns)
    {
        for (int i = 0; i < size; i++)
        {
            for (int column = 0; column < columns; column++)
            {
                double sum = matrix[i * columns + column];
                for (int k = 0; k < i; k++)
                {
                    sum -= factor[i * size + k] * matrix[k * columns + column];
                }

                matrix[i * columns + column] = sum / factor[i * size + i];
            }
        }
    }
}
