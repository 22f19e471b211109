"""Operations as bare names, and the reasons between them. Knows no garment."""
