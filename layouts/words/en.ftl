# English (British spelling). Every sentence handspan prints about an exam.
# Sides are the mother's. Write "your left" to the family, "her left" to the midwife.

## Sides and parts

her-left = Her left
her-right = Her right
